import type { StripProblem } from '../derive/lumber/strip-plan/strip-problem.ts';
import { isTooWet } from '../derive/lumber/too-wet.ts';
import { topProblem } from '../derive/lumber/top-problem.ts';
import type { Board } from '../model/records.ts';
import { defineLumberWishes } from '../shop/lumber-wishes.ts';
import type { Job } from './job.ts';
import { readPins } from './read-pins.ts';

/** The strips of the top of a job from its boards; undefined without a top of strips. */
export function stripProblemOf({ nominal, shop, design }: Job, boards: readonly Board[]): StripProblem | undefined {
  const wishes = defineLumberWishes(design.lumber);
  const { pins } = readPins(wishes.pinned);
  const pinned = new Set(pins.map(({ mark }) => mark));
  // What is settled by hand stays, wet or not: it may be glued already.
  const usable = boards.filter((board) => !isTooWet(board) || pinned.has(board.mark));
  return topProblem(nominal, usable, shop, wishes, pins);
}
