import type { Mm } from '../../../units/mm.ts';
import { overlap } from './defect-areas.ts';

/** The finished underside: depth below the show face on the center line, and what it loses a mm outwards. */
export interface Taper {
  readonly center: Mm;
  readonly slope: number;
}

/** mm of [x0, x1] where the underside lies between two depths below the show face: there it cuts through a defect. */
export function cutAcross(least: Mm, most: Mm, x0: Mm, x1: Mm, { center, slope }: Taper): Mm {
  if (x1 <= x0) return 0;
  if (slope === 0) return least < center && center < most ? x1 - x0 : 0;
  const near = Math.max(0, (center - most) / slope);
  const far = (center - least) / slope;
  if (far <= near) return 0;
  return overlap(x0, x1, near, far) + overlap(x0, x1, -far, -near);
}

/** How far an interval may be shifted, and the part of the blank in which it counts; mm from the center line. */
export interface Shift {
  readonly first: Mm;
  readonly last: Mm;
  readonly from: Mm;
  readonly to: Mm;
}

/**
 * The least of `cutAcross` while [x0, x1] is shifted. What an interval shares with a fixed one rises, stays and falls as it
 * moves, so the least lies at one of the ends; where the underside runs through the defect on two sides of the center
 * line, each side is taken at its own least.
 */
export function leastCut(least: Mm, most: Mm, x0: Mm, x1: Mm, shift: Shift, { center, slope }: Taper): Mm {
  if (x1 <= x0) return 0;
  if (slope === 0) return least < center && center < most ? leastShared(x0, x1, shift, shift.from, shift.to) : 0;
  const near = (center - most) / slope;
  const far = (center - least) / slope;
  if (far <= Math.max(0, near)) return 0;
  if (near <= 0) return leastShared(x0, x1, shift, -far, far);
  return leastShared(x0, x1, shift, near, far) + leastShared(x0, x1, shift, -far, -near);
}

function leastShared(x0: Mm, x1: Mm, { first, last, from, to }: Shift, a: Mm, b: Mm): Mm {
  const [low, high] = [Math.max(from, a), Math.min(to, b)];
  return Math.min(overlap(x0 + first, x1 + first, low, high), overlap(x0 + last, x1 + last, low, high));
}
