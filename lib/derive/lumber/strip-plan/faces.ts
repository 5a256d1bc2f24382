import type { Board } from '../../../model/records.ts';

/** Bark side up is 0, bark side down is 1. */
export type Flip = 0 | 1;
export const FLIPS: readonly Flip[] = [0, 1];

/** The face that lies up; of a board whose bark side is unknown, face A is taken for it. */
export function faceUp(board: Board, flip: Flip): 'A' | 'B' {
  const bark = board.bark ?? 'A';
  if (flip === 0) return bark;
  return bark === 'A' ? 'B' : 'A';
}
