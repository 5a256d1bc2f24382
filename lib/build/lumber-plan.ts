import { cutList as listOf } from '../derive/cut-list/cut-list.ts';
import { type BuyingList, buyingList } from '../derive/lumber/buying-list.ts';
import { type CutJob, cutJobs } from '../derive/lumber/cut-plan/cut-jobs.ts';
import type { CutProgress } from '../derive/lumber/cut-plan/cut-search.ts';
import type { StripProblem } from '../derive/lumber/strip-plan/strip-problem.ts';
import { type Tally, tallyOf } from '../derive/lumber/tally.ts';
import { isTooWet } from '../derive/lumber/too-wet.ts';
import { topProblem } from '../derive/lumber/top-problem.ts';
import type { Board } from '../model/records.ts';
import { defineLumberWishes } from '../shop/lumber-wishes.ts';
import type { Job } from './job.ts';
import { readPins } from './read-pins.ts';
import { ROUGH_STEP } from './rough-size.ts';
import { type StripsFound, type StripWork, searchStrips } from './search-strips.ts';

/** The lumber of a job: what to buy, and with boards at hand how far they go and what comes out of each. */
export interface LumberPlan {
  readonly buying: BuyingList;
  readonly tally?: Tally;
  readonly strips?: StripsFound;
  readonly cuts: readonly { readonly job: CutJob; readonly progress: CutProgress }[];
  /** The search was ended before its work was spent: this is the best so far. */
  readonly stopped: boolean;
}

export interface LumberWork extends StripWork {
  /** Steps for each cut plan. */
  readonly cuts: number;
}

/** Of a build and of the command alike, so that papers and screen tell the same plan: about a second for twenty boards (measured). */
export const FULL_WORK: LumberWork = { strips: 3_000_000, cuts: 600 };

/** Steps between two looks at the caller. */
const STRETCH = 4;

/** What to buy, and the best plans that so much work finds. The same job and work give the same plan. */
export async function lumberPlan(job: Job, work: LumberWork): Promise<LumberPlan> {
  const { shop, records, cutList, design } = job;
  // Lumber is bought before anything is measured: by the design.
  const buying = buyingList(job.nominal, job.fit ? listOf(job.nominal) : cutList, shop);
  const { boards } = records;
  if (!boards) return { buying, cuts: [], stopped: false };
  const problem = stripProblemOf(job, boards);
  const strips = problem && (await searchStrips(problem, work));
  const plan = strips?.status.plan;
  const spoken = plan?.strips.flatMap(({ show, bottom }) => [show.mark, ...(bottom ? [bottom.mark] : [])]) ?? [];
  const { matchPosts } = defineLumberWishes(design.lumber);
  const jobs = cutJobs(cutList, dryBoards(boards), {
    kerf: shop.lumber.kerf,
    step: ROUGH_STEP[design.units],
    without: (row) => row.kind === 'strip',
    together: (row) => (matchPosts && row.kind === 'post' ? row.name : undefined),
    spoken,
  });
  const { cuts, stopped } = strips?.stopped ? { cuts: [], stopped: true } : await searchCuts(jobs, work);
  return { buying, tally: tallyOf(buying, dryBoards(boards)), ...(strips ? { strips } : {}), cuts, stopped };
}

/** The strips of the top of a job from its boards; undefined without a top of strips. */
export function stripProblemOf({ nominal, shop, design }: Job, boards: readonly Board[]): StripProblem | undefined {
  const wishes = defineLumberWishes(design.lumber);
  const { pins } = readPins(wishes.pinned);
  const pinned = new Set(pins.map(({ mark }) => mark));
  // What is settled by hand stays, wet or not: it may be glued already.
  const usable = boards.filter((board) => !isTooWet(board) || pinned.has(board.mark));
  return topProblem(nominal, usable, shop, wishes, pins);
}

/** Wet boards are told by a finding and left out. */
const dryBoards = (boards: readonly Board[]): Board[] => boards.filter((board) => !isTooWet(board));

async function searchCuts(jobs: readonly CutJob[], { cuts: steps, onProgress = () => false }: LumberWork) {
  const cuts: { job: CutJob; progress: CutProgress }[] = [];
  if (jobs.length === 0) return { cuts, stopped: false };
  const { loadSolver } = await import('../derive/lumber/master.ts');
  const { planCuts } = await import('../derive/lumber/cut-plan/plan-cuts.ts');
  const solver = await loadSolver();
  let stopped = false;
  for (const job of jobs) {
    const search = planCuts(job.problem, solver);
    let progress = search.advance(Math.min(STRETCH, steps));
    while (progress.state === 'searching' && progress.steps < steps && !stopped) {
      stopped = await onProgress(`${job.lumber}: ${progress.steps} steps, gap ${gapText(progress)}`);
      if (!stopped) progress = search.advance(Math.min(STRETCH, steps - progress.steps));
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
