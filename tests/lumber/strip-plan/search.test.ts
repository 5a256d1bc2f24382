import { describe, expect, it, test } from 'vitest';
import { checkStripPlan } from '../../../lib/derive/lumber/strip-plan/check-strip-plan.ts';
import type { StripPlan, StripStatus } from '../../../lib/derive/lumber/strip-plan/strip-plan.ts';
import type { StripProblem } from '../../../lib/derive/lumber/strip-plan/strip-problem.ts';
import { planStrips } from '../../../lib/derive/lumber/strip-plan/strip-search.ts';
import { randomPile } from './random-boards.ts';
import { smallProblem } from './small-problem.ts';

const WORK = 3_000_000;
const to = (problem: StripProblem, below?: number): StripStatus =>
  planStrips(problem, below === undefined ? {} : { below, rounds: 0 }).advance(WORK);

const reversed = (problem: StripProblem): StripProblem => ({ ...problem, boards: [...problem.boards].reverse() });

// A fault that small piles do not show once came out here: a buffer that two recursions shared.
// Of the last two the underside decides: the best of pile 12 costs more by it, that of pile 13 does without.
describe.each([
  [1, 'either'],
  [2, 'either'],
  [3, 'either'],
  [12, 'two'],
  [13, 'two'],
] as const)('24 boards and 8 strips, pile %i, layers: %s', (seed, layers) => {
  const problem = randomPile({ seed, boards: 24, strips: 8, settings: { layers } });
  const first = to(problem);

  it('is proved, and its plan passes the checker', () => {
    expect(first.done).toBe(true);
    expect(first.bound).toBeLessThanOrEqual(first.plan!.value);
    expect(checkStripPlan(problem, first.plan!)).toEqual([]);
  });

  it('comes back to the same cost from just above it, without the plan', () => {
    const again = to(problem, first.plan!.value + 0.01);
    expect(again.done).toBe(true);
    expect(again.plan!.value).toBeCloseTo(first.plan!.value, 6);
    expect(to(problem, first.plan!.value - 0.01).plan).toBeUndefined();
  });

  it('is the same plan for boards in another order', () => {
    expect(to(reversed(problem)).plan).toEqual(first.plan);
  });
});

describe('a search in pieces', () => {
  it('never has a bound above its plan, and ends where one run ends', () => {
    const problem = randomPile({ seed: 5, boards: 16, strips: 7 });
    const search = planStrips(problem);
    for (let k = 0; k < 400 && !search.status.done; k++) {
      const { plan, bound } = search.advance(10_000);
      if (plan) expect(bound).toBeLessThanOrEqual(plan.value + 1e-9);
    }
    expect(search.status.plan).toEqual(to(problem).plan);
  });
});

const solvable = Array.from({ length: 60 }, (_, k) => smallProblem(1000 + k)).filter((p) => to(p).plan);

test('a board made thicker never makes the plan worse', () => {
  // Volume is paid for, so it is left out here.
  const free = (p: StripProblem): StripProblem => ({
    ...p,
    settings: {
      ...p.settings,
      preference: { mode: 'weighted', weights: { ...WEIGHTS, volume: 0, undersideDefects: 0 } },
    },
  });
  expect(solvable.length).toBeGreaterThan(8);
  for (const problem of solvable) {
    const before = to(free(problem)).plan!.value;
    problem.boards.forEach((_, i) => {
      const boards = problem.boards.map((b, k) => (k === i ? { ...b, thickness: b.thickness + 2 } : b));
      expect(to(free({ ...problem, boards })).plan!.value).toBeLessThanOrEqual(before + 1e-6);
    });
  }
});

const WEIGHTS = {
  reserve: 4,
  shownDefects: 5,
  undersideDefects: 1,
  rings: 2,
  tone: 20,
  volume: 0.25,
  symmetry: 0,
} as const;

test('boards settled by hand stay where they were put, and the plan is no cheaper for it', () => {
  let pinned = 0;
  for (const problem of solvable.filter(({ pins }) => pins === undefined)) {
    const free = to(problem).plan!;
    const { mark } = problem.boards[0]!;
    for (const faceUp of ['A', 'B'] as const) {
      const { plan } = to({ ...problem, pins: [{ mark, strip: 1, layer: 'show', faceUp }] });
      if (!plan) continue;
      pinned++;
      expect(plan.strips[0]!.show).toMatchObject({ mark, faceUp });
      expect(plan.value).toBeGreaterThanOrEqual(free.value - 1e-6);
    }
  }
  expect(pinned).toBeGreaterThan(4);
});

describe('the checker', () => {
  const problem = randomPile({ seed: 1, boards: 12, strips: 5 });
  const { plan } = to(problem);
  const faults = (change: (p: StripPlan) => StripPlan): readonly unknown[] => checkStripPlan(problem, change(plan!));
  const first = (change: Partial<StripPlan['strips'][number]>) => (p: StripPlan) => ({
    ...p,
    strips: p.strips.map((s, k) => (k === 0 ? { ...s, ...change } : s)),
  });

  it('finds nothing in a sound plan', () => {
    expect(faults((p) => p)).toEqual([]);
  });

  it('sees what is planted', () => {
    const { from, to: end, show } = plan!.strips[0]!;
    expect(faults(first({ to: end + 5 }))).not.toEqual([]);
    expect(faults(first({ from: from + 5 }))).not.toEqual([]);
    expect(faults(first({ reserve: 99 }))).not.toEqual([]);
    expect(faults(first({ show: { ...show, mark: plan!.strips[1]!.show.mark } }))).not.toEqual([]);
    expect(faults((p) => ({ ...p, strips: p.strips.slice(1) }))).not.toEqual([]);
    const wide = { ...problem, settings: { ...problem.settings, leastHalf: 200 } };
    expect(checkStripPlan(wide, plan!).map(({ what }) => what)).toEqual(['half too narrow']);
    expect(faults(first({ show: { ...show, undersideDefects: show.undersideDefects + 0.01 } }))).not.toEqual([]);
  });
});
