import { describe, expect, it } from 'vitest';
import { checkCutPlan } from '../../../lib/derive/lumber/cut-plan/check-cut-plan.ts';
import type { CutBoard, CutPart, CutProblem } from '../../../lib/derive/lumber/cut-plan/cut-problem.ts';
import { cutPlanOf } from '../../../lib/derive/lumber/cut-plan/plan-cuts.ts';
import { loadSolver } from '../../../lib/derive/lumber/master.ts';
import { seeded } from '../../../lib/derive/lumber/strip-plan/seeded.ts';
import { fitsBoard } from './fits-board.ts';

const solver = await loadSolver();

/** One or two boards, two to four pieces, all sizes small whole numbers; a zone on some boards. */
function tinyProblem(seed: number): CutProblem {
  const next = seeded(seed * 104729);
  const whole = (low: number, high: number): number => low + Math.floor(next() * (high - low + 1));
  const boards = Array.from({ length: whole(1, 2) }, (_, n): CutBoard => {
    const [length, width] = [whole(8, 14), whole(4, 8)];
    const [from, near] = [whole(0, length - 2), whole(0, width - 1)];
    const zone = { from, to: from + whole(1, 2), near, far: near + 1 };
    return { id: `B${n}`, length, width, cost: length * width + whole(0, 20), avoid: next() < 0.5 ? [zone] : [] };
  });
  const parts = Array.from({ length: whole(2, 4) }, (_, n): CutPart => {
    return { id: `P${n}`, length: whole(2, 8), width: whole(1, 4), count: 1 };
  });
  return { parts, boards, kerf: whole(0, 1), step: 1 };
}

/** Cost of the cheapest boards that hold all, by trying every way to deal the parts out; Infinity when none do. */
function cheapest(
  { parts, boards, kerf }: CutProblem,
  allowed: (own: readonly (readonly CutPart[])[]) => boolean = () => true,
): number {
  let best = Infinity;
  for (let n = 0; n < boards.length ** parts.length; n++) {
    const own = boards.map((_, b) => parts.filter((_, i) => Math.floor(n / boards.length ** i) % boards.length === b));
    const cost = boards.reduce((sum, b, k) => sum + (own[k]!.length > 0 ? b.cost : 0), 0);
    if (cost < best && allowed(own) && boards.every((b, k) => fitsBoard(own[k]!, b, kerf))) best = cost;
  }
  return best;
}

describe('the cut plan against every way of cutting', () => {
  it('brute force knows what it must: a part as large as the board, a zone in its middle, a kerf too many', () => {
    const part = { id: 'P', length: 4, width: 4, count: 1 };
    const board = { id: 'B', length: 8, width: 4, cost: 1, avoid: [] };
    expect(fitsBoard([part, part], board, 0)).toBe(true);
    expect(fitsBoard([part, part], board, 1)).toBe(false);
    expect(fitsBoard([part], { ...board, avoid: [{ from: 4, to: 5, near: 1, far: 2 }] }, 1)).toBe(true);
    expect(fitsBoard([part, part], { ...board, avoid: [{ from: 4, to: 5, near: 1, far: 2 }] }, 0)).toBe(false);
  });

  it('agrees on one or two boards and up to four parts; never below the optimum, never a wrong proof', () => {
    const seen = { optimal: 0, impossible: 0 };
    for (let seed = 1; seed <= 120; seed++) {
      const problem = tinyProblem(seed);
      const best = cheapest(problem);
      const { state, value, bound, plan } = cutPlanOf(problem, solver, 80);
      expect([seed, state]).toEqual([seed, best === Infinity ? 'impossible' : 'optimal']);
      expect([seed, value]).toEqual([seed, best === Infinity ? Infinity : expect.closeTo(best, 6)]);
      expect([seed, bound <= best * (1 + 1e-6)]).toEqual([seed, true]);
      expect(plan ? checkCutPlan(problem, plan) : []).toEqual([]);
      seen[state as keyof typeof seen]++;
    }
    expect(seen.optimal).toBeGreaterThan(60);
    expect(seen.impossible).toBeGreaterThan(10);
  });

  it('agrees with groups that come from one board', () => {
    let apart = 0;
    for (let seed = 1; seed <= 60; seed++) {
      const drawn = tinyProblem(seed);
      const parts = drawn.parts.map((p, n) => (n < 3 ? { ...p, together: 'set' } : p));
      const problem = { ...drawn, parts };
      const best = cheapest(problem, (own) => own.filter((p) => p.some(({ together }) => together)).length < 2);
      const { state, value, plan } = cutPlanOf(problem, solver, 80);
      expect([seed, value]).toEqual([seed, best === Infinity ? Infinity : expect.closeTo(best, 6)]);
      expect([seed, state]).toEqual([seed, best === Infinity ? 'impossible' : 'optimal']);
      expect(plan ? checkCutPlan(problem, plan) : []).toEqual([]);
      if (best !== cheapest(drawn)) apart++;
    }
    expect(apart).toBeGreaterThan(0);
  });
});
