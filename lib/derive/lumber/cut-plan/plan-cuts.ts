import type { Solver } from '../master.ts';
import { seeded } from '../strip-plan/seeded.ts';
import { cutPlan } from './board-plans.ts';
import { columnMaster } from './column-master.ts';
import type { CutPlan } from './cut-plan.ts';
import type { CutProblem } from './cut-problem.ts';
import type { CutProgress, CutSearch, Misfit, SearchState } from './cut-search.ts';
import { gridOf } from './grid-of.ts';
import { misfits } from './misfits.ts';
import type { Pattern } from './pattern.ts';
import { phases } from './phases.ts';
import { pricer } from './pricer.ts';
import { isProved, type Work } from './work.ts';

/** Seed of the search when the problem names none (our convention). */
const SEED = 1;

/**
 * Searches the cheapest boards, and how to cut them, for all parts. The same problem gives the same plan after the same
 * number of steps, whatever the order of its lists.
 */
export function planCuts(problem: CutProblem, solver: Solver): CutSearch {
  const grid = gridOf(problem);
  const work: Work = {
    grid,
    solver,
    pricer: pricer(grid),
    spare: pricer(grid),
    master: columnMaster(solver, grid),
    chance: seeded(problem.seed ?? SEED),
    bound: 0,
    value: Infinity,
    pool: [],
  };
  let steps = 0;
  let over = false;
  let missing: readonly Misfit[] = misfits(grid, work.pricer);
  const run = phases(work);
  let shown: { patterns: readonly Pattern[]; plan: CutPlan } | undefined;

  const step = (): void => {
    const next = run.next();
    steps++;
    if (!next.done) return;
    over = true;
    missing = next.value;
  };
  const progress = (): CutProgress => {
    if (work.best && shown?.patterns !== work.best) {
      shown = { patterns: work.best, plan: cutPlan(problem, grid, work.best) };
    }
    const state = stateOf(work, over, missing);
    return {
      state,
      value: work.value * grid.unit,
      bound: (state === 'impossible' ? Infinity : work.bound) * grid.unit,
      gap: work.best ? Math.max(0, work.value - work.bound) / work.bound || 0 : Infinity,
      steps,
      ...(shown ? { plan: shown.plan } : {}),
      misfits: missing,
    };
  };
  return {
    advance(count) {
      for (let n = 0; n < count && !over && missing.length === 0; n++) step();
      return progress();
    },
    dispose: () => work.master.dispose(),
  };
}

function stateOf(work: Work, over: boolean, missing: readonly Misfit[]): SearchState {
  if (work.best && isProved(work)) return 'optimal';
  if (missing.some((m) => m.reason !== 'no place found')) return 'impossible';
  return over ? 'done' : 'searching';
}

/** Steps of `cutPlanOf` when the caller names none: some seconds for 100 parts. */
export const CUT_STEPS = 1000;

/** Runs a search for so many steps and frees it. */
export function cutPlanOf(problem: CutProblem, solver: Solver, steps = CUT_STEPS): CutProgress {
  const search = planCuts(problem, solver);
  try {
    return search.advance(steps);
  } finally {
    search.dispose();
  }
}
