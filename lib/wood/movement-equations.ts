import type { Mm } from '../units/mm.ts';
import { FIBER_SATURATION } from './fiber-saturation.ts';
import { inRange, positive } from './in-range.ts';

/** Both moistures of Eq 13-2 lie between these, in percent (FPL-GTR-190 table 13-5, read). */
export const COEFFICIENT_RANGE = { low: 6, high: 14 } as const;

/** Change of a dimension, mm, negative when it shrinks: Eq 13-2, ΔD = D C (M_F - M_I), C per 1 % moisture. */
export function changeByCoefficient(dimension: Mm, coefficient: number, from: number, to: number): Mm {
  const { low, high } = COEFFICIENT_RANGE;
  inRange('moisture before, for Eq 13-2,', from, low, high, ' %');
  inRange('moisture after, for Eq 13-2,', to, low, high, ' %');
  return positive('dimension', dimension, ' mm') * coefficient * (to - from);
}

/**
 * Change of a dimension, mm, negative when it shrinks: Eq 13-3, ΔD = D (M_F - M_I) / (3000/S - 30 + M_I), S the shrinkage
 * in percent from green to ovendry. (Validity read in FPL-GTR-190; form from memory, confirmed by a second source.)
 */
export function changeByShrinkage(dimension: Mm, shrinkagePercent: number, from: number, to: number): Mm {
  inRange('moisture before, for Eq 13-3,', from, 0, FIBER_SATURATION, ' %');
  inRange('moisture after, for Eq 13-3,', to, 0, FIBER_SATURATION, ' %');
  const green = 3000 / positive('shrinkage', shrinkagePercent, ' %');
  return (positive('dimension', dimension, ' mm') * (to - from)) / (green - 30 + from);
}

/**
 * The coefficient that Eq 13-3 amounts to about 10 % moisture: C = S / (3000 - 20 S). It gives 24 of 27 printed hardwood
 * rows of table 13-5 to 0.00001: a test of the data, and a fallback to be marked as computed.
 */
export function coefficientFromShrinkage(shrinkagePercent: number): number {
  return shrinkagePercent / (3000 - 20 * positive('shrinkage', shrinkagePercent, ' %'));
}
