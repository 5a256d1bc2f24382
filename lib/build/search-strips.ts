import { explainSteps, type StripShortage } from '../derive/lumber/strip-plan/explain-infeasible.ts';
import { leastMoves } from '../derive/lumber/strip-plan/least-moves.ts';
import type { StripPlan, StripStatus } from '../derive/lumber/strip-plan/strip-plan.ts';
import type { StripProblem } from '../derive/lumber/strip-plan/strip-problem.ts';
import { planStrips } from '../derive/lumber/strip-plan/strip-search.ts';

/** What a search for the strips of a top came to. */
export interface StripsFound {
  readonly problem: StripProblem;
  readonly status: StripStatus;
  /** It was ended before its work was spent. */
  readonly stopped: boolean;
  /** What keeps the boards from making the top, when it was asked for and nothing makes it. */
  readonly shortage?: StripShortage;
}

export interface StripWork {
  /** Units of work. */
  readonly strips: number;
  /** Awaited between two stretches of the search, so that the caller can show how far it is; true ends it. */
  readonly onProgress?: (text: string) => boolean | Promise<boolean>;
  /** A plan that was made for these boards before some of them came out otherwise: what costs no less moves nothing. */
  readonly before?: StripPlan | undefined;
  /** Looks for what is missing when there is no plan: many more searches. */
  readonly explain?: boolean;
}

/** Work between two looks at the caller. */
const STRETCH = 5_000;

/** Searches until nothing better is left, the work is spent, or the caller ends it. */
export async function searchStrips(problem: StripProblem, work: StripWork): Promise<StripsFound> {
  const { strips, onProgress = () => false, before, explain = false } = work;
  const search = planStrips(problem);
  let status = search.status;
  let stopped = false;
  while (!status.done && status.work < strips && !stopped) {
    const spent = status.work;
    status = search.advance(STRETCH);
    if (status.work === spent) break;
    stopped = await onProgress(progressText(status));
  }
  if (status.done && !status.plan && explain && !stopped) return explained({ problem, status, stopped }, onProgress);
  return { problem, status: before ? nearest(problem, status, before) : status, stopped: stopped && !status.done };
}

/** The same with what is missing, unless the caller ends that. */
async function explained(found: StripsFound, onProgress: NonNullable<StripWork['onProgress']>): Promise<StripsFound> {
  const steps = explainSteps(found.problem);
  for (let looks = 1; ; looks++) {
    const { done, value } = steps.next();
    if (done) return value ? { ...found, shortage: value } : found;
    if (await onProgress(`strips: there is no plan; what would mend that is looked for, ${looks} looks so far`)) {
      return { ...found, stopped: true };
    }
  }
}

function nearest(problem: StripProblem, status: StripStatus, before: StripPlan): StripStatus {
  const plan = leastMoves(problem, status.plan, before);
  if (!plan || plan === status.plan) return status;
  const gap = status.done ? 0 : Math.max(0, plan.value - status.bound) / Math.max(status.bound, 1e-9);
  return { ...status, plan, gap };
}

const progressText = ({ plan, bound, work }: StripStatus): string =>
  plan
    ? `strips: ${plan.value.toFixed(2)}, none better than ${bound.toFixed(2)}, after ${work} steps`
    : `strips: no plan yet after ${work} steps`;
