import type { Defect } from '../../../model/records.ts';
import { overlap } from './defect-areas.ts';

/** The finished underside: depth below the show face on the center line, and what it loses a mm outwards. */
export interface Taper {
  readonly center: number;
  readonly slope: number;
}

/** Depths below the finished show face. */
type Depths = readonly [least: number, most: number];

/** The depths that a defect fills, from its face inwards, in a board that lies between two depths. */
export function depthsOf(defect: Defect, faceUp: 'A' | 'B', top: number, bottom: number): Depths {
  if (defect.face === 'through') return [top, bottom];
  const deep = Math.min(defect.depth, bottom - top);
  return defect.face === faceUp ? [top, top + deep] : [bottom - deep, bottom];
}

/** mm of [x0, x1] where the underside lies between two depths: there it cuts through the defect. */
export function cutAcross([least, most]: Depths, x0: number, x1: number, taper: Taper): number {
  if (x1 <= x0) return 0;
  if (taper.slope === 0) return least < taper.center && taper.center < most ? x1 - x0 : 0;
  const near = Math.max(0, (taper.center - most) / taper.slope);
  const far = (taper.center - least) / taper.slope;
  if (far <= near) return 0;
  return overlap(x0, x1, near, far) + overlap(x0, x1, -far, -near);
}

/**
 * The least of `cutAcross` while the interval is shifted from `first` to `last`, counted within `half` of the center line. What
 * an interval shares with a fixed one rises, stays and falls as it moves, so the least lies at one of the ends; where the
 * underside runs through the defect on two sides of the center line, each side is taken at its own least.
 */
export function leastCut(
  [least, most]: Depths,
  [x0, x1]: readonly [number, number],
  [first, last]: readonly [number, number],
  taper: Taper,
  half: number,
): number {
  if (x1 <= x0 || taper.slope === 0) return 0;
  const near = (taper.center - most) / taper.slope;
  const far = Math.min(half, (taper.center - least) / taper.slope);
  if (far <= Math.max(0, near)) return 0;
  const shared = (a: number, b: number): number =>
    Math.min(overlap(x0 + first, x1 + first, a, b), overlap(x0 + last, x1 + last, a, b));
  return near <= 0 ? shared(-far, far) : shared(near, far) + shared(-far, -near);
}
