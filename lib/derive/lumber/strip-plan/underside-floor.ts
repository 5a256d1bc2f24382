import { leastCut } from './cut-across.ts';
import type { Lying } from './lying.ts';
import { MM2_PER_DM2 } from './prices.ts';
import type { StripModel } from './strip-model.ts';

/** A strip that may still slide: mm wide, its left edge somewhere between two places. */
export interface Sliding {
  readonly width: number;
  readonly first: number;
  readonly last: number;
  /** An outer strip loses width as it slides, on the side away from the center line. */
  readonly outer: boolean;
}

/**
 * What a bottom board costs at least by its defects on the underside, wherever its strip comes to lie. Holds as long as ripping
 * does not go through an outer strip.
 */
export function undersideFloor(model: StripModel, bottom: number, top: number, strip: Sliding): number {
  const price = model.prices.of.undersideDefects;
  const { defects } = model.boards[bottom]!;
  if (defects.length === 0 || price === 0) return 0;
  const rips = ripsOf(strip, model.width[bottom]! - strip.width);
  if (rips === undefined) return 0;
  let least = Number.POSITIVE_INFINITY;
  for (const way of model.lying[bottom]!) {
    for (const rip of rips) least = Math.min(least, leastOf(model, bottom, top, strip, way, rip));
    if (least === 0) return 0;
  }
  return price * model.prices.counted('undersideDefects', least / MM2_PER_DM2);
}

/** mm that may be ripped off the left side: none right of the center line, all left of it, half over it. */
function ripsOf({ width, first, last, outer }: Sliding, ripOff: number): readonly number[] | undefined {
  const over = first < 0 && last + width > 0;
  if (outer && over) return undefined;
  if (ripOff < 1e-9) return [0];
  const rips: number[] = [];
  if (last >= 0) rips.push(0);
  if (first + width <= 0) rips.push(ripOff);
  if (over) rips.push(ripOff / 2);
  return rips;
}

/** mm² on the underside at least, lying one way, `rip` mm off the left side, on the best stretch of the board. */
function leastOf(model: StripModel, bottom: number, top: number, strip: Sliding, way: Lying, rip: number): number {
  const { cuts, taper, half } = model;
  const count = way.near.length;
  for (let k = 0; k < count; k++) {
    const within = [Math.max(0, way.near[k]! - rip), Math.min(strip.width, way.far[k]! - rip)] as const;
    cuts[k] = leastCut(top + way.least[k]!, top + way.most[k]!, within, [strip.first, strip.last], taper, half);
  }
  const { starts, lengths } = model.stretches[bottom]!;
  let least = Number.POSITIVE_INFINITY;
  for (let row = 0; row < starts.length; row++) {
    let area = 0;
    for (let k = 0; k < count; k++) area += cuts[k]! * lengths[row * count + k]!;
    if (area < least) least = area;
  }
  return least;
}
