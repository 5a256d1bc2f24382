import { type Milled, milledBoards } from '../derive/lumber/milled-boards.ts';
import { type MovedBoard, movedBoards } from '../derive/lumber/strip-plan/moved-boards.ts';
import { boardsOfCuts } from './boards-of-pieces.ts';
import { type Job, makeJob } from './job.ts';
import { type LumberPlan, lumberPlan } from './lumber-plan.ts';
import type { LumberWork } from './wood-plan.ts';

/** A board as it came out, and as it stands in the table. */
export interface MilledBoard extends Milled {
  /** mm. */
  readonly measured: number;
}

/** A part that is cut from another board than before; undefined where it is not cut at all. */
export interface RecutPart {
  readonly part: string;
  readonly before?: string;
  readonly after?: string;
}

/** What becomes of the plan of a job when boards came out otherwise than they were measured. */
export interface MilledPlan {
  readonly boards: readonly MilledBoard[];
  /** The job with the boards as they came out: everything is for these. */
  readonly job: Job;
  readonly plan: LumberPlan;
  /** The plan of the boards as measured. */
  readonly before: LumberPlan;
  /** Boards that lie otherwise than before; absent when there is no plan of the strips on one of the sides. */
  readonly moved?: readonly MovedBoard[];
  /** Empty when the search was ended early: then it tells nothing. */
  readonly recut: readonly RecutPart[];
}

/**
 * Plans with the boards as measured and once more as they came out, with as much work, and tells what moves. A plan that costs
 * no more than the best one found stays as it was.
 */
export async function milledPlan(asMeasured: Job, milled: readonly Milled[], work: LumberWork): Promise<MilledPlan> {
  const measured = asMeasured.records.boards;
  if (!measured) throw new RangeError('boards that came out otherwise, and none are measured');
  const before = await lumberPlan(asMeasured, { ...toldAs('as measured', work), explain: false });
  const { design, values, shop, records } = asMeasured;
  const job = makeJob(design, values, shop, { ...records, boards: milledBoards(measured, milled) });
  const was = before.strips?.status.plan;
  const found = await lumberPlan(job, { ...toldAs('as they came out', work), before: was });
  const is = found.strips?.status.plan;
  return {
    boards: milled.map((one) => ({ ...one, measured: measured.find(({ mark }) => mark === one.mark)!.thickness })),
    job,
    plan: found,
    before,
    ...(was && is ? { moved: movedBoards(was, is) } : {}),
    recut: before.stopped || found.stopped ? [] : recutParts(before, found),
  };
}

/** The same work, whose progress says which of the two plans it is of. */
function toldAs(which: string, work: LumberWork): LumberWork {
  const { onProgress } = work;
  return onProgress ? { ...work, onProgress: (text) => onProgress(`${which}: ${text}`) } : work;
}

function recutParts(before: LumberPlan, after: LumberPlan): RecutPart[] {
  const [were, are] = [boardsOfCuts(before), boardsOfCuts(after)];
  return [...new Set([...were.keys(), ...are.keys()])]
    .filter((part) => were.get(part) !== are.get(part))
    .map((part) => {
      const [was, is] = [were.get(part), are.get(part)];
      return { part, ...(was === undefined ? {} : { before: was }), ...(is === undefined ? {} : { after: is }) };
    });
}
