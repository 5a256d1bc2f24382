import type { Mm } from '../../../units/mm.ts';
import { positive } from '../../../wood/in-range.ts';

/** Where a straight clamp line may run so that joints of unequal depth all stay closed, mm below the flat face. */
export interface KernWindow {
  readonly low: Mm;
  readonly high: Mm;
  /** Whether there is such a place: the deepest joint at most twice the shallowest. */
  readonly possible: boolean;
}

/** Middle third of every joint: d_max/3 to 2 d_min/3. Derived here from statics, no published rule was found. */
export function kernWindow(depths: readonly Mm[]): KernWindow {
  const deepest = positive('greatest depth', Math.max(...depths), ' mm');
  const shallowest = positive('least depth', Math.min(...depths), ' mm');
  return { low: deepest / 3, high: (2 * shallowest) / 3, possible: deepest <= 2 * shallowest };
}

/** How a joint bears on a clamp line that does not run through its middle. */
export interface JointContact {
  /** Over which the joint is pressed, from the side of the clamp. */
  readonly contact: Mm;
  /** Over which it opens. */
  readonly open: Mm;
  /** Greatest pressure over the pressure spread evenly; Infinity at an arris and beyond. */
  readonly peak: number;
}

/**
 * A joint pressed along a line y below the flat face; no glue pulls.
 *
 * ```
 *   │◄── y ──►│ clamp
 *   ╞═════════╧════╪ - - - ┤    contact 3 (d/2 - |y - d/2|), the rest opens
 *   0                      d
 * ```
 */
export function jointContact(depth: Mm, y: Mm): JointContact {
  const half = positive('depth', depth, ' mm') / 2;
  const off = Math.abs(y - half);
  const edge = half - off;
  if (edge <= 0) return { contact: 0, open: depth, peak: Infinity };
  if (off <= depth / 6) return { contact: depth, open: 0, peak: 1 + (6 * off) / depth };
  return { contact: 3 * edge, open: depth - 3 * edge, peak: (2 * depth) / (3 * edge) };
}
