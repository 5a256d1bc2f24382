import type { Mm } from '../units/mm.ts';
import { positive } from './in-range.ts';
import { THICKNESS_CLASSES, type ThicknessClass } from './thickness-classes.ts';

/** An exact fit counts as a fit: thicknesses that differ by no more than this are the same (our convention). */
const SAME: Mm = 1e-6;

/** What a class leaves over a needed thickness, mm; 0 for an exact fit, negative when it does not reach. */
export function spare(thicknessClass: ThicknessClass, needed: Mm): Mm {
  const rest = thicknessClass.dressed.value - positive('needed thickness', needed, ' mm');
  return Math.abs(rest) <= SAME ? 0 : rest;
}

/**
 * The thinnest class that still has the needed thickness (clean-up included) when it is dressed, or undefined when none
 * has. The order of the classes does not matter.
 */
export function classFor(
  needed: Mm,
  classes: readonly ThicknessClass[] = THICKNESS_CLASSES,
): ThicknessClass | undefined {
  return classes
    .filter((candidate) => spare(candidate, needed) >= 0)
    .reduce<ThicknessClass | undefined>(
      (best, candidate) => (best && best.dressed.value <= candidate.dressed.value ? best : candidate),
      undefined,
    );
}
