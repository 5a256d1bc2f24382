import type { Mm } from './mm.ts';

/** Cubic millimetres in one board foot: 144 cubic inches (Wood Handbook FPL-GTR-190, and the definition of the unit). */
export const MM3_PER_BOARD_FOOT = 144 * 25.4 ** 3;

/** Board feet of a net volume in cubic millimetres. */
export const boardFeet = (mm3: number): number => mm3 / MM3_PER_BOARD_FOOT;

/** Board feet as lumber is sold: nominal thickness, never under 1 in, times width times length. */
export function boardFeetNominal(nominalThickness: Mm, width: Mm, length: Mm): number {
  return boardFeet(Math.max(nominalThickness, 25.4) * width * length);
}
