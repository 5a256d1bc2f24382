import { cutList as listOf } from '../derive/cut-list/cut-list.ts';
import { type BlanksWanted, blanksWanted } from '../derive/lumber/blanks-wanted.ts';
import { type BuyingList, buyingList } from '../derive/lumber/buying-list.ts';
import { type Tally, tallyOf } from '../derive/lumber/tally.ts';
import { dryBoards } from './cut-jobs-of.ts';
import type { Job } from './job.ts';
import { type KeptBoards, keepBoards } from './keep-boards.ts';
import { hasAllWood, noWood } from './no-wood.ts';
import { type LumberWork, type WoodPlan, woodPlan } from './wood-plan.ts';

/** The lumber of a job: what to buy, and with boards at hand how far they go and what comes out of each. */
export interface LumberPlan extends WoodPlan {
  readonly buying: BuyingList;
  readonly tally?: Tally;
  /** Absent when the strips may take any board. */
  readonly kept?: KeptBoards;
  /** For parts that have no board; empty when all have one. */
  readonly wanted: readonly BlanksWanted[];
}

/**
 * Of a build and of the command alike, so that papers and screen tell the same plan. A unit of the strips is about a microsecond:
 * some seconds at most, less than one for the demo pile (measured).
 */
export const FULL_WORK: LumberWork = { strips: 3_000_000, cuts: 600 };

/** What to buy, and the best plans that so much work finds. The same job and work give the same plan. */
export async function lumberPlan(job: Job, work: LumberWork): Promise<LumberPlan> {
  const { shop, records, cutList } = job;
  // Lumber is bought before anything is measured: by the design.
  const buying = buyingList(job.nominal, job.fit ? listOf(job.nominal) : cutList, shop);
  const { boards } = records;
  if (!boards) return { buying, cuts: [], wanted: [], stopped: false };
  const found = await keepBoards({ job, boards, work, first: await woodPlan(job, boards, work) });
  const tally = tallyOf(buying, dryBoards(boards), shop.lumber.kerf);
  return {
    buying,
    tally: decided(tally, found),
    ...found,
    wanted: blanksWanted(found.cuts, buying, shop),
  };
}

/** A plan knows better than a tally of sizes: with it buying goes on or stops. */
function decided(tally: Tally, found: WoodPlan): Tally {
  if (hasAllWood(found)) return { ...tally, verdict: 'stop', by: 'plan' };
  const { top, parts } = noWood(found);
  return top || parts.length > 0 ? { ...tally, verdict: 'go on', by: 'plan' } : tally;
}

const known = new WeakMap<Job, Promise<LumberPlan>>();

/** The plan that goes into the papers, made once for a job. */
export function paperPlan(job: Job): Promise<LumberPlan> {
  const found = known.get(job) ?? lumberPlan(job, FULL_WORK);
  known.set(job, found);
  return found;
}
