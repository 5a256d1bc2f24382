import type { CutJob } from '../derive/lumber/cut-plan/cut-jobs.ts';
import type { CutPart } from '../derive/lumber/cut-plan/cut-problem.ts';
import type { CutProgress, Misfit } from '../derive/lumber/cut-plan/cut-search.ts';
import type { Solver } from '../derive/lumber/master.ts';
import { formatNumber } from '../units/format-length.ts';

/** What a search for the cuts of a job came to. */
export interface CutsFound {
  /** What is planned: parts that have no board are not among its own. */
  readonly job: CutJob;
  /** Why parts have no board, one misfit each; the plan is that of all others. */
  readonly progress: CutProgress;
  /** Parts that have no board. */
  readonly left: readonly CutPart[];
}

export interface CutWork {
  /** Steps for each cut plan. */
  readonly cuts: number;
  /** Awaited between two stretches of the search; true ends it. */
  readonly onProgress?: (text: string) => boolean | Promise<boolean>;
}

/** Steps between two looks at the caller. */
const STRETCH = 4;

/** Searches job after job. */
export async function searchCuts(jobs: readonly CutJob[], work: CutWork) {
  const cuts: CutsFound[] = [];
  if (jobs.length === 0) return { cuts, stopped: false };
  const { loadSolver } = await import('../derive/lumber/master.ts');
  const solver = await loadSolver();
  let stopped = false;
  for (const job of jobs) {
    const found = await searchRest(job, solver, work, stopped);
    stopped = found.stopped;
    cuts.push(found.cuts);
  }
  return { cuts, stopped };
}

/** Searches; where parts are left over, again without them, so that all others are planned. */
async function searchRest(whole: CutJob, solver: Solver, work: CutWork, ended: boolean) {
  const misfits: Misfit[] = [];
  let job = whole;
  let stopped = ended;
  for (;;) {
    const found = await searchJob(job, solver, work, stopped);
    stopped = found.stopped;
    const { progress } = found;
    if (!progress.plan) misfits.push(...withTheirGroups(job, progress.misfits));
    const gone = new Set(misfits.map(({ part }) => part));
    const parts = job.problem.parts.filter(({ id }) => !gone.has(id));
    if (progress.plan || parts.length === 0 || parts.length === job.problem.parts.length) {
      const left = whole.problem.parts.filter(({ id }) => gone.has(id));
      return { cuts: { job, progress: { ...progress, misfits }, left }, stopped };
    }
    job = { ...job, problem: { ...job.problem, parts } };
  }
}

/** Parts that are to come from one board are left over together. */
function withTheirGroups({ problem }: CutJob, misfits: readonly Misfit[]): Misfit[] {
  const known = new Map(misfits.map((one) => [one.part, one]));
  const words = new Map(
    problem.parts.flatMap(({ id, together }) => (known.has(id) && together !== undefined ? [[together, id]] : [])),
  );
  const others = problem.parts.flatMap(({ id, count, length, width, together }): Misfit[] => {
    const first = together === undefined ? undefined : words.get(together);
    if (known.has(id) || first === undefined) return [];
    return [{ ...known.get(first)!, part: id, count, wanted: { length, width } }];
  });
  return [...misfits, ...others];
}

async function searchJob(job: CutJob, solver: Solver, { cuts: steps, onProgress = never }: CutWork, ended: boolean) {
  const { planCuts } = await import('../derive/lumber/cut-plan/plan-cuts.ts');
  const search = planCuts(job.problem, solver);
  let stopped = ended;
  let progress = search.advance(Math.min(STRETCH, steps));
  while (progress.state === 'searching' && progress.steps < steps && !stopped) {
    stopped = await onProgress(`${job.lumber}: ${progress.steps} steps, gap ${gapText(progress)}`);
    if (!stopped) progress = search.advance(Math.min(STRETCH, steps - progress.steps));
  }
  search.dispose();
  return { progress, stopped };
}

const never = (): boolean => false;

const gapText = ({ gap }: CutProgress): string =>
  Number.isFinite(gap) ? `${formatNumber(gap * 100, 1)} %` : 'not known';
