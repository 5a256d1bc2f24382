import type { Board } from '../../../model/records.ts';
import type { Mm } from '../../../units/mm.ts';
import { type Flip, faceUp } from './faces.ts';

/**
 * A board lying one way, its defects as numbers: where each lies from the left edge of the usable width, and the depths that it
 * fills, from the upper face of the board.
 */
export interface Lying {
  readonly flip: Flip;
  readonly turned: boolean;
  readonly near: Float64Array;
  readonly far: Float64Array;
  readonly least: Float64Array;
  readonly most: Float64Array;
}

/** The reference edge of a board lies left when face A is up and the board is not turned. */
export const referenceLeft = (board: Board, flip: Flip, turned: boolean): boolean =>
  (faceUp(board, flip) === 'A') !== turned;

/** A board lying one way; `usable` mm of its width are left after `jointing` mm went off both edges. */
export function lyingOf(board: Board, usable: Mm, jointing: Mm, flip: Flip, turned: boolean): Lying {
  const up = faceUp(board, flip);
  const onLeft = referenceLeft(board, flip, turned);
  const { thickness, defects } = board;
  const deep = (depth: Mm): Mm => Math.min(depth, thickness);
  return {
    flip,
    turned,
    near: Float64Array.from(defects, (d) => (onLeft ? d.near - jointing : usable + jointing - d.far)),
    far: Float64Array.from(defects, (d) => (onLeft ? d.far - jointing : usable + jointing - d.near)),
    least: Float64Array.from(defects, (d) => (d.face === 'through' || d.face === up ? 0 : thickness - deep(d.depth))),
    most: Float64Array.from(defects, (d) => (d.face === up ? deep(d.depth) : thickness)),
  };
}
