import type { Mm } from '../../../units/mm.ts';
import { COEFFICIENT_RANGE, changeByShrinkage } from '../../../wood/movement-equations.ts';

export interface WidthChangeOptions {
  /** At the first moisture. */
  readonly width: Mm;
  /** Change per length and percent of moisture. */
  readonly perPercent: number;
  /** Percent, green to ovendry. */
  readonly shrinkage?: number;
  /** Moisture before and after, percent. */
  readonly from: number;
  readonly to: number;
}

/** Swelling of a width across the grain, mm, negative when it shrinks. */
export interface WidthChange {
  /** W C ΔM. */
  readonly byCoefficient: Mm;
  /** Whether both moistures lie in the 6 to 14 % for which coefficients are printed. */
  readonly coefficientHolds: boolean;
  /** W ΔM / (3000/S - 30 + M), for any moisture up to 30 %; absent without a shrinkage. */
  readonly byShrinkage?: Mm;
}

/** Both equations of the Wood Handbook (FPL-GTR-190 Eq 13-2 and 13-3) side by side; which to print is the caller's. */
export function widthChange({ width, perPercent, shrinkage, from, to }: WidthChangeOptions): WidthChange {
  const { low, high } = COEFFICIENT_RANGE;
  const byCoefficient = width * perPercent * (to - from);
  const coefficientHolds = Math.min(from, to) >= low && Math.max(from, to) <= high;
  if (shrinkage === undefined) return { byCoefficient, coefficientHolds };
  return { byCoefficient, coefficientHolds, byShrinkage: changeByShrinkage(width, shrinkage, from, to) };
}

/**
 * Gap at the shoulders of a rail that a post shrinks away from, mm: half the post's width counts, its middle stays put.
 */
export const shoulderGap = (postWidth: Mm, perPercent: number, moistureChange: number): Mm =>
  (postWidth / 2) * perPercent * Math.abs(moistureChange);
