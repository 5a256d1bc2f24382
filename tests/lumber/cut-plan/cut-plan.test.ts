import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkCutPlan } from '../../../lib/derive/lumber/cut-plan/check-cut-plan.ts';
import { cutPlanOf, planCuts } from '../../../lib/derive/lumber/cut-plan/plan-cuts.ts';
import { loadSolver } from '../../../lib/derive/lumber/master.ts';
import { drawnProblem } from './drawn-problem.ts';

const solver = await loadSolver();

describe('the cut plan', () => {
  it('cuts every part as often as demanded, clear of zones, by cuts that replay; its bound is no higher', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), fc.integer({ min: 4, max: 16 }), (seed, parts) => {
        const problem = drawnProblem(parts, 4, seed, 2);
        const { plan, bound, value } = cutPlanOf(problem, solver, 30);
        if (!plan) return;
        expect(checkCutPlan(problem, plan)).toEqual([]);
        expect(bound).toBeLessThanOrEqual(value * (1 + 1e-6));
      }),
      { numRuns: 14, seed: 7 },
    );
  });

  it('does not depend on the order of its lists', () => {
    const problem = drawnProblem(30, 9, 3);
    const turned = { ...problem, parts: [...problem.parts].reverse(), boards: [...problem.boards].reverse() };
    expect(cutPlanOf(turned, solver, 60)).toEqual(cutPlanOf(problem, solver, 60));
  });

  it('gives the same plan twice', () => {
    const problem = drawnProblem(16, 5, 9, 2);
    expect(cutPlanOf(problem, solver, 40)).toEqual(cutPlanOf(problem, solver, 40));
  });

  it('carries on in pieces to the plan of one run', () => {
    for (const seed of [9, 10]) {
      const problem = drawnProblem(16, 5, seed, 2);
      const search = planCuts(problem, solver);
      for (const steps of [1, 2, 5, 0, 13, 1, 8]) search.advance(steps);
      const last = search.advance(30);
      search.dispose();
      expect(last).toEqual(cutPlanOf(problem, solver, 60));
    }
  });

  it('takes more zones on a board than it can tell apart, and stays clear of each', () => {
    const drawn = drawnProblem(6, 3, 5, 3);
    const avoid = Array.from({ length: 45 }, (_, n) => {
      return { from: 20 + 37 * n, to: 26 + 37 * n, near: (n * 31) % 60, far: ((n * 31) % 60) + 5 };
    });
    const boards = drawn.boards.map((board) => ({ ...board, avoid }));
    const extra = { id: 'clear', length: 2600, width: 200, cost: 40, avoid: [], count: 3 };
    const problem = { ...drawn, boards: [...boards, extra] };
    const { plan } = cutPlanOf(problem, solver, 40);
    expect(checkCutPlan(problem, plan!)).toEqual([]);
  });

  it('keeps a group in one board', () => {
    const drawn = drawnProblem(16, 6, 4, 2);
    const parts = [
      ...drawn.parts,
      { id: 'post', length: 600, width: 60, count: 2, together: 'posts' },
      { id: 'foot', length: 500, width: 50, count: 2, together: 'posts' },
    ];
    const problem = { ...drawn, parts };
    const { plan } = cutPlanOf(problem, solver, 45);
    expect(plan).toBeDefined();
    expect(checkCutPlan(problem, plan!)).toEqual([]);
  });
});

describe('the checker', () => {
  const problem = drawnProblem(12, 4, 2, 2);
  const plan = cutPlanOf(problem, solver, 40).plan!;
  const [board, ...others] = plan.boards;
  const [part, ...rest] = board!.placed;
  const withBoard = (change: Partial<typeof board>) => ({
    ...plan,
    boards: [{ ...board!, ...change } as typeof board & object, ...others],
  });

  it('sees planted faults', () => {
    expect(checkCutPlan(problem, plan)).toEqual([]);
    expect(checkCutPlan(problem, withBoard({ placed: rest })).join()).toContain('times, not');
    expect(checkCutPlan(problem, withBoard({ placed: [{ ...part!, x: part!.x + 1 }, ...rest] })).join()).toContain(
      'does not come out',
    );
    expect(checkCutPlan(problem, withBoard({ cuts: board!.cuts.slice(1) })).join()).toContain('is not there');
    const moved = board!.cuts.map((cut) => ({ ...cut, stop: cut.at + 1 }));
    expect(checkCutPlan(problem, withBoard({ cuts: moved })).join()).toMatch(/cut 1 of \S+ stops at/);
    expect(checkCutPlan(problem, withBoard({ placed: [{ ...part!, x: -5 }, ...rest] })).join()).toContain(
      'reaches over',
    );
    expect(checkCutPlan(problem, { ...plan, cost: plan.cost + 1 }).join()).toContain('the boards cost');
    expect(checkCutPlan(problem, { ...plan, kerf: 1 }).join()).toContain('kerf');
  });

  it('sees parts that overlap, a part on a zone, a group that is split', () => {
    const over = plan.boards.map((b) => ({ ...b, placed: b.placed.map((p) => ({ ...p, x: 0, y: 0 })) }));
    expect(checkCutPlan(problem, { ...plan, boards: over }).join()).toContain('are too near');
    const { x, y, length, width } = part!;
    const zone = { from: x + length / 2, to: x + length / 2 + 1, near: y + width / 2, far: y + width / 2 + 1 };
    const marred = problem.boards.map((b) => (b.id === board!.board ? { ...b, avoid: [...b.avoid, zone] } : b));
    expect(checkCutPlan({ ...problem, boards: marred }, plan).join()).toContain(`${part!.part} lies on a zone`);
    const grouped = { ...problem, parts: problem.parts.map((p) => ({ ...p, together: 'all' })) };
    expect(plan.boards.length).toBeGreaterThan(1);
    expect(checkCutPlan(grouped, plan)).toEqual([`all comes from ${plan.boards.length} boards`]);
  });
});

describe('what cannot be cut', () => {
  const board = { id: 'B1', length: 1000, width: 100, cost: 10, avoid: [] };

  it('names the part, what is missing and what would do', () => {
    const parts = [{ id: 'long', length: 1200, width: 90, count: 2 }];
    const { state, misfits, plan } = cutPlanOf({ parts, boards: [board], kerf: 3 }, solver, 5);
    expect(plan).toBeUndefined();
    expect(state).toBe('impossible');
    expect(misfits).toEqual([
      {
        part: 'long',
        count: 2,
        reason: 'too large',
        short: 200,
        narrow: 0,
        nearest: 'B1',
        wanted: { length: 1200, width: 90 },
      },
    ]);
  });

  it('names what is left over', () => {
    const parts = [{ id: 'rail', length: 900, width: 90, count: 2 }];
    const { misfits, plan } = cutPlanOf({ parts, boards: [board], kerf: 3 }, solver, 100);
    expect(plan).toBeUndefined();
    expect(misfits.map((m) => [m.part, m.count, m.wanted])).toEqual([['rail', 1, { length: 900, width: 90 }]]);
  });
});
