import { describe, expect, test } from 'vitest';
import { checkStripPlan } from '../../../lib/derive/lumber/strip-plan/check-strip-plan.ts';
import { replan } from '../../../lib/derive/lumber/strip-plan/replan.ts';
import type { StripPlan } from '../../../lib/derive/lumber/strip-plan/strip-plan.ts';
import { planStrips } from '../../../lib/derive/lumber/strip-plan/strip-search.ts';
import { STRIP_ORDER, STRIP_WEIGHTS } from '../../../lib/derive/lumber/strip-plan/strip-settings.ts';
import { pick, randomFrom } from '../../tables/random.ts';
import { randomPile } from './random-boards.ts';
import { solved } from './solved.ts';

/** Marks by strip; mirrored plans read the same. */
function rows(plan: StripPlan | undefined): string {
  const marks = plan!.strips.map(({ show, bottom }) => `${show.mark}/${bottom?.mark ?? '-'}`);
  const [one, other] = [marks.join(' '), marks.reverse().join(' ')];
  return one < other ? one : other;
}

/** Piles of 24 boards that the search decides soon. */
const SEEDS = [3, 4, 8] as const;
const two = { layers: 'two' } as const;

describe('24 boards, 8 strips of two layers', () => {
  for (const seed of SEEDS) {
    test(`pile ${seed}: again from just above the best, without the plan, the same plan comes back`, () => {
      const problem = randomPile({ seed, boards: 24, strips: 8, settings: two });
      const first = solved(problem);
      expect(first.done).toBe(true);
      expect(checkStripPlan(problem, first.plan!)).toEqual([]);
      const again = solved(problem, { below: first.plan!.value + 1e-3, rounds: 0 });
      expect(again.done).toBe(true);
      expect(again.plan!.value).toBeCloseTo(first.plan!.value, 6);
      expect(rows(again.plan)).toBe(rows(first.plan));
      const none = solved(problem, { below: first.plan!.value - 1e-3, rounds: 0 });
      expect(none.done).toBe(true);
      expect(none.plan).toBeUndefined();
    });

    test(`pile ${seed}: the order of the boards changes nothing, nor does the length of the stretches`, () => {
      const problem = randomPile({ seed, boards: 24, strips: 8, settings: two });
      const random = randomFrom(seed);
      const boards = [...problem.boards];
      for (let k = boards.length - 1; k > 0; k--) {
        const other = Math.floor(random() * (k + 1));
        [boards[k], boards[other]] = [boards[other]!, boards[k]!];
      }
      const search = planStrips({ ...problem, boards });
      while (!search.status.done) search.advance(7_000);
      expect(JSON.stringify(search.status.plan)).toBe(JSON.stringify(solved(problem).plan));
    });
  }
});

describe('what the maker asks for', () => {
  const problem = randomPile({ seed: 12, boards: 16, strips: 6 });

  test('pinned boards stay, the rest is planned round them, at a price', () => {
    const free = solved(problem);
    const pins = [
      { mark: '07', strip: 3, layer: 'show', faceUp: 'B' },
      { mark: '02', layer: 'bottom' },
    ] as const;
    const { plan, done } = solved({ ...problem, pins });
    expect(done).toBe(true);
    expect(plan!.strips[2]!.show).toMatchObject({ mark: '07', faceUp: 'B' });
    expect(plan!.strips.map((s) => s.bottom?.mark)).toContain('02');
    expect(checkStripPlan({ ...problem, pins }, plan!)).toEqual([]);
    expect(plan!.value).toBeGreaterThanOrEqual(free.plan!.value - 1e-6);
  });

  test('a seam on the center line', () => {
    const centered = { ...problem, settings: { ...problem.settings, seamOnCenterLine: true } };
    const { plan } = solved(centered, {}, 300_000);
    expect(checkStripPlan(centered, plan!)).toEqual([]);
    expect(Math.min(...plan!.strips.map(({ from }) => Math.abs(from)))).toBeLessThan(1e-6);
  });

  test('terms in order: the first decides, whatever the others cost', () => {
    const small = randomPile({ seed: 5, boards: 9, strips: 4 });
    const first = (order: typeof STRIP_ORDER) => {
      const settings = { ...small.settings, preference: { mode: 'ordered', order } as const };
      const status = solved({ ...small, settings });
      expect(status.done).toBe(true);
      return status.plan!.terms;
    };
    const byReserve = first(STRIP_ORDER);
    const byVolume = first(['volume', ...STRIP_ORDER.filter((term) => term !== 'volume')]);
    const byTone = first(['tone', ...STRIP_ORDER.filter((term) => term !== 'tone')]);
    expect(byVolume.volume).toBeLessThanOrEqual(Math.min(byReserve.volume, byTone.volume) + 1e-9);
    expect(byTone.tone).toBeLessThanOrEqual(Math.min(byReserve.tone, byVolume.tone) + 1e-9);
    expect(byReserve.reserve).toBeLessThanOrEqual(Math.min(byVolume.reserve, byTone.reserve) + 1e-9);
  });

  test('a thicker board never makes the plan worse, when wood is not counted', () => {
    const weights = { ...STRIP_WEIGHTS, volume: 0, undersideDefects: 0 };
    for (let seed = 1; seed <= 12; seed++) {
      const pile = randomPile({ seed, boards: 9, strips: 4, thinner: 3 });
      const plain = { ...pile, settings: { ...pile.settings, preference: { mode: 'weighted', weights } as const } };
      const before = solved(plain);
      const mark = pick(randomFrom(seed), plain.boards).mark;
      const boards = plain.boards.map((b) => (b.mark === mark ? { ...b, thickness: b.thickness + 2 } : b));
      const after = solved({ ...plain, boards });
      expect(after.done && before.done).toBe(true);
      const cost = (status: typeof before): number => status.plan?.value ?? Number.POSITIVE_INFINITY;
      expect(cost(after)).toBeLessThanOrEqual(cost(before) + 1e-6);
    }
  });

  test('a board that came out thin: the others are planned anew, and the difference told', () => {
    const before = solved(problem).plan!;
    const mark = before.strips[2]!.show.mark;
    const board = problem.boards.find((b) => b.mark === mark)!;
    const { status, moved, dearer } = replan(problem, before, { ...board, thickness: board.thickness - 12 }, 400_000);
    expect(status.plan).toBeDefined();
    expect(moved.length).toBeGreaterThan(0);
    expect(dearer).toBeDefined();
  });
});
