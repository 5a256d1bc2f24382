import type { CutKind } from './cut-plan.ts';
import { bestDepths, type Depths, depthsOf, mostOf } from './depths.ts';
import type { Grid } from './grid.ts';
import { fillLanes, lanesOf, NOISE, scratchFor } from './lanes.ts';
import type { Pattern } from './pattern.ts';
import { readPattern } from './read-pattern.ts';

/** Finds the most valuable pattern of a board. */
export interface Pricer {
  /** Sets the values of the parts and how many of each one lane may hold at most. */
  prepare(values: ArrayLike<number>, left: ArrayLike<number>): void;
  /**
   * Value of the best pattern of the board, either direction, or rip first only. Demand holds for one lane, not for the
   * board: the value is never below that of the best pattern that also keeps the demand.
   */
  best(board: number, ripOnly?: boolean): number;
  /** The same in one direction, with lanes from `from` on only. */
  bestFrom(board: number, first: CutKind, from: number): number;
  /** The pattern that the last `best` found. */
  pattern(): Pattern;
}

export function pricer(grid: Grid): Pricer {
  const rip = depthsOf(grid, lanesOf(grid, 'rip'));
  const crosscut = depthsOf(grid, lanesOf(grid, 'crosscut'));
  const scratch = scratchFor(rip.lanes, crosscut.lanes);
  let found: Depths | undefined;
  let at = 0;
  return {
    prepare(values, left) {
      fillLanes(rip.lanes, values, left, scratch);
      fillLanes(crosscut.lanes, values, left, scratch);
    },
    best(board, ripOnly = false) {
      at = board;
      const ripped = grid.first === 'crosscut' ? 0 : bestDepths(rip, board, 0);
      found = ripped > NOISE ? rip : undefined;
      if ((ripOnly && !grid.first) || grid.first === 'rip') return ripped;
      if (mostOf(crosscut, board) <= ripped + NOISE) return ripped;
      const crossed = bestDepths(crosscut, board, 0);
      if (crossed <= ripped + NOISE) return ripped;
      found = crosscut;
      return crossed;
    },
    bestFrom(board, first, from) {
      at = board;
      const depths = first === 'rip' ? rip : crosscut;
      const value = bestDepths(depths, board, from);
      found = value > NOISE ? depths : undefined;
      return value;
    },
    pattern: () => readPattern(grid, found, at),
  };
}
