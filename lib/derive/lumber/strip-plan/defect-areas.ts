import type { Board, Defect } from '../../../model/records.ts';
import { MM2_PER_DM2 } from './prices.ts';

/** mm that two intervals share. */
export const overlap = (a0: number, a1: number, b0: number, b1: number): number =>
  Math.max(0, Math.min(a1, b1) - Math.max(a0, b0));

const liesOn = (defect: Defect, face: 'A' | 'B'): boolean => defect.face === 'through' || defect.face === face;

/**
 * Places where the top may begin on a board so that no other place shows less: the area is linear between them. From the
 * reference end of the board; the middle comes first, so that it wins ties.
 */
export function startsOf(board: Board, length: number): number[] {
  const spare = board.length - length;
  const turns = board.defects.flatMap((d) => [d.from, d.to, d.from - length, d.to - length]);
  return [spare / 2, 0, spare, ...turns.filter((start) => start > 0 && start < spare)];
}

/**
 * dm² of defects on a face that reach deeper than the skim which planing takes off it; `wide` tells how many mm of the width of
 * each count, all of them by default.
 */
export function shownArea(
  board: Board,
  face: 'A' | 'B',
  start: number,
  length: number,
  skim: number,
  wide: (defect: number) => number = (k) => board.defects[k]!.far - board.defects[k]!.near,
): number {
  let area = 0;
  board.defects.forEach((d, k) => {
    if (liesOn(d, face) && d.depth > skim) area += overlap(d.from, d.to, start, start + length) * wide(k);
  });
  return area / MM2_PER_DM2;
}

/** Places where the top may begin on a board, and mm of each defect within the length used from there: a row a place. */
export interface Stretches {
  readonly starts: readonly number[];
  readonly lengths: Float64Array;
}

/** The stretches that leave the least defects, for any weights of the defects. */
export function stretchesOf(board: Board, length: number, starts: readonly number[]): Stretches {
  const count = board.defects.length;
  const lengths = new Float64Array(count * starts.length);
  starts.forEach((start, row) => {
    board.defects.forEach((d, k) => {
      lengths[row * count + k] = overlap(d.from, d.to, start, start + length);
    });
  });
  return { starts, lengths };
}

/** mm² of `count` defects when the top begins at a place of the stretches, `across[k]` mm of each counting. */
export function rowArea(across: Float64Array, count: number, { lengths }: Stretches, row: number): number {
  let area = 0;
  for (let k = 0; k < count; k++) area += across[k]! * lengths[row * count + k]!;
  return area;
}

/** The same at the best place to begin. */
export function leastArea(across: Float64Array, count: number, stretches: Stretches): number {
  let least = Number.POSITIVE_INFINITY;
  for (let row = 0; row < stretches.starts.length; row++) {
    const area = rowArea(across, count, stretches, row);
    if (area < least) least = area;
  }
  return least;
}
