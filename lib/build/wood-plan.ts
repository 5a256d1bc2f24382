import type { StripPlan } from '../derive/lumber/strip-plan/strip-plan.ts';
import type { Board } from '../model/records.ts';
import { cutJobsOf } from './cut-jobs-of.ts';
import type { Job } from './job.ts';
import { type CutsFound, type CutWork, searchCuts } from './search-cuts.ts';
import { type StripsFound, type StripWork, searchStrips } from './search-strips.ts';
import { stripProblemOf } from './strip-problem-of.ts';

/** What comes out of which board: the strips of the top, and all other parts from the boards that these leave over. */
export interface WoodPlan {
  /** Absent without a top of strips. */
  readonly strips?: StripsFound;
  readonly cuts: readonly CutsFound[];
  /** The search was ended before its work was spent: this is the best so far. */
  readonly stopped: boolean;
}

export interface LumberWork extends StripWork, CutWork {}

/** Plans the strips, without the boards that are kept from them, then the cuts. */
export async function woodPlan(
  job: Job,
  boards: readonly Board[],
  work: LumberWork,
  kept: readonly string[] = [],
): Promise<WoodPlan> {
  const problem = stripProblemOf(
    job,
    boards.filter(({ mark }) => !kept.includes(mark)),
  );
  const strips = problem && (await searchStrips(problem, work));
  if (strips?.stopped) return { strips, cuts: [], stopped: true };
  const found = await searchCuts(cutJobsOf(job, boards, marksOf(strips?.status.plan)), work);
  return { ...(strips ? { strips } : {}), ...found };
}

const marksOf = (plan: StripPlan | undefined): string[] =>
  plan?.strips.flatMap(({ show, bottom }) => [show.mark, ...(bottom ? [bottom.mark] : [])]) ?? [];
