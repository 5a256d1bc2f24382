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

/**
 * The least of `cutAcross` while the interval is shifted from `first` to `last`, counted within `half` of the center line. What
 * an interval shares with a fixed one rises, stays and falls as it moves, so the least lies at one of the ends; where the
 * underside runs through the defect on two sides of the center line, each side is taken at its own least.
 */
export function leastCut(
  least: Mm,
  most: Mm,
  [x0, x1]: readonly [Mm, Mm],
  [first, last]: readonly [Mm, Mm],
  { center, slope }: Taper,
  half: Mm,
): Mm {
  if (x1 <= x0 || slope === 0) return 0;
  const near = (center - most) / slope;
  const far = Math.min(half, (center - least) / slope);
  if (far <= Math.max(0, near)) return 0;
  const shared = (a: Mm, b: Mm): Mm =>
    Math.min(overlap(x0 + first, x1 + first, a, b), overlap(x0 + last, x1 + last, a, b));
  return near <= 0 ? shared(-far, far) : shared(near, far) + shared(-far, -near);
}
