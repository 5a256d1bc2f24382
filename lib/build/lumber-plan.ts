import { cutList as listOf } from '../derive/cut-list/cut-list.ts';
import { type BuyingList, buyingList } from '../derive/lumber/buying-list.ts';
import { type CutJob, cutJobs } from '../derive/lumber/cut-plan/cut-jobs.ts';
import type { CutProgress } from '../derive/lumber/cut-plan/cut-search.ts';
import type { StripStatus } from '../derive/lumber/strip-plan/strip-plan.ts';
import type { StripProblem } from '../derive/lumber/strip-plan/strip-problem.ts';
import { planStrips } from '../derive/lumber/strip-plan/strip-search.ts';
import { type Tally, tallyOf } from '../derive/lumber/tally.ts';
import { isTooWet } from '../derive/lumber/too-wet.ts';
import { topProblem } from '../derive/lumber/top-problem.ts';
import { defineLumberWishes } from '../shop/lumber-wishes.ts';
import type { Job } from './job.ts';
import { readPins } from './read-pins.ts';

/** The lumber of a job: what to buy, and with boards at hand how far they go and what comes out of each. */
export interface LumberPlan {
  readonly buying: BuyingList;
  readonly tally?: Tally;
  readonly strips?: { readonly problem: StripProblem; readonly status: StripStatus };
  readonly cuts: readonly { readonly job: CutJob; readonly progress: CutProgress }[];
  /** The search was ended before its work was spent: this is the best so far. */
  readonly stopped: boolean;
}

export interface LumberWork {
  /** Units of work for the strip plan, and steps for each cut plan. */
  readonly strips: number;
  readonly cuts: number;
  /** Awaited between two stretches of the search, so that the caller can show how far it is; true ends it. */
  readonly onProgress?: (text: string) => boolean | Promise<boolean>;
}

/** Of a build and of the command alike, so that papers and screen tell the same plan: about a second for twenty boards (measured). */
export const FULL_WORK: LumberWork = { strips: 3_000_000, cuts: 600 };

/** mm, what a rule is read to: 1/32 in, or 1 mm (our convention); positions of cuts are printed to that. */
const RULE = { in: 25.4 / 32, mm: 1 } as const;

/** Work between two looks at the caller. */
const STRETCH = { strips: 5_000, cuts: 4 } as const;

/** What to buy, and the best plans that so much work finds. The same job and work give the same plan. */
export async function lumberPlan(job: Job, work: LumberWork): Promise<LumberPlan> {
  const { shop, records, cutList, design } = job;
  // Lumber is bought before anything is measured: by the design.
  const buying = buyingList(job.nominal, job.fit ? listOf(job.nominal) : cutList, shop);
  if (!records.boards) return { buying, cuts: [], stopped: false };
  // Wet boards are told by a finding and left out.
  const boards = records.boards.filter((board) => !isTooWet(board));
  const wishes = defineLumberWishes(design.lumber);
  const { pins } = readPins(wishes.pinned);
  const problem = topProblem(job.nominal, boards, shop, wishes, pins);
  const strips = problem && (await searchStrips(problem, work));
  const plan = strips?.status.plan;
  const spoken = plan?.strips.flatMap(({ show, bottom }) => [show.mark, ...(bottom ? [bottom.mark] : [])]) ?? [];
  const jobs = cutJobs(cutList, boards, {
    kerf: shop.lumber.kerf,
    step: RULE[design.units],
    without: (row) => row.kind === 'strip',
    together: (row) => (wishes.matchPosts && row.kind === 'post' ? row.name : undefined),
    spoken,
  });
  const { cuts, stopped } = strips?.stopped ? { cuts: [], stopped: true } : await searchCuts(jobs, work);
  return {
    buying,
    tally: tallyOf(buying, boards),
    ...(strips ? { strips: { problem: strips.problem, status: strips.status } } : {}),
    cuts,
    stopped,
  };
}

async function searchStrips(problem: StripProblem, { strips, onProgress = () => false }: LumberWork) {
  const search = planStrips(problem);
  let status = search.status;
  let stopped = false;
  while (!status.done && status.work < strips && !stopped) {
    const before = status.work;
    status = search.advance(STRETCH.strips);
    if (status.work === before) break;
    stopped = await onProgress(stripText(status));
  }
  return { problem, status, stopped };
}

const stripText = ({ plan, bound, work }: StripStatus): string =>
  plan
    ? `strips: ${plan.value.toFixed(2)}, none better than ${bound.toFixed(2)}, after ${work} steps`
    : `strips: no plan yet after ${work} steps`;

async function searchCuts(jobs: readonly CutJob[], { cuts: steps, onProgress = () => false }: LumberWork) {
  const cuts: { job: CutJob; progress: CutProgress }[] = [];
  if (jobs.length === 0) return { cuts, stopped: false };
  const { loadSolver } = await import('../derive/lumber/master.ts');
  const { planCuts } = await import('../derive/lumber/cut-plan/plan-cuts.ts');
  const solver = await loadSolver();
  let stopped = false;
  for (const job of jobs) {
    const search = planCuts(job.problem, solver);
    let progress = search.advance(Math.min(STRETCH.cuts, steps));
    while (progress.state === 'searching' && progress.steps < steps && !stopped) {
      stopped = await onProgress(`${job.lumber}: ${progress.steps} steps, gap ${gapText(progress)}`);
      if (!stopped) progress = search.advance(Math.min(STRETCH.cuts, steps - progress.steps));
    }
    search.dispose();
    cuts.push({ job, progress });
  }
  return { cuts, stopped };
}

const gapText = ({ gap }: CutProgress): string => (Number.isFinite(gap) ? `${(gap * 100).toFixed(1)} %` : 'not known');

const known = new WeakMap<Job, Promise<LumberPlan>>();

/** The plan that goes into the papers, made once for a job. */
export function paperPlan(job: Job): Promise<LumberPlan> {
  const found = known.get(job) ?? lumberPlan(job, FULL_WORK);
  known.set(job, found);
  return found;
}

/** The board that each piece comes from, by mark of the piece; strips by their place from the left. */
export function boardsOfPieces({ cuts }: LumberPlan): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  for (const { progress } of cuts) {
    for (const { board, placed } of progress.plan?.boards ?? []) for (const { part } of placed) found.set(part, board);
  }
  return found;
}
