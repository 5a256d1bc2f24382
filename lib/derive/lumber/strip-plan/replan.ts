import type { Board } from '../../../model/records.ts';
import type { StripPlan, StripStatus } from './strip-plan.ts';
import type { StripProblem } from './strip-problem.ts';
import { planStrips } from './strip-search.ts';

/** A board that has another place than before, or one only in one of the plans. */
export interface MovedBoard {
  readonly mark: string;
  /** Strip from the left, the first is 1, and layer; undefined when it is left over. */
  readonly before?: string;
  readonly after?: string;
}

/** What becomes of a plan when one board turns out otherwise. */
export interface Replanned {
  readonly problem: StripProblem;
  readonly status: StripStatus;
  readonly moved: readonly MovedBoard[];
  /** Cost more than before; undefined when there is no plan any more. */
  readonly dearer?: number;
}

/** Plans again with one board as it came out, and tells the difference to the plan before. */
export function replan(problem: StripProblem, before: StripPlan, changed: Board, work: number): Replanned {
  const boards = problem.boards.map((board) => (board.mark === changed.mark ? changed : board));
  const next = { ...problem, boards };
  const status = planStrips(next).advance(work);
  if (!status.plan) return { problem: next, status, moved: [] };
  const [were, are] = [placesOf(before), placesOf(status.plan)];
  const marks = [...new Set([...were.keys(), ...are.keys()])].sort((a, b) => (a < b ? -1 : 1));
  const moved = marks
    .filter((mark) => were.get(mark) !== are.get(mark))
    .map((mark): MovedBoard => {
      const [was, is] = [were.get(mark), are.get(mark)];
      return { mark, ...(was === undefined ? {} : { before: was }), ...(is === undefined ? {} : { after: is }) };
    });
  return { problem: next, status, moved, dearer: status.plan.value - before.value };
}

function placesOf(plan: StripPlan): Map<string, string> {
  const places = new Map<string, string>();
  plan.strips.forEach(({ show, bottom }, j) => {
    places.set(show.mark, `strip ${j + 1} show`);
    if (bottom) places.set(bottom.mark, `strip ${j + 1} bottom`);
  });
  return places;
}
