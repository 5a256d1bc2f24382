import { depthsOf, leastCut } from './cut-across.ts';
import { MM2_PER_DM2 } from './prices.ts';
import { FLIPS, type Flip, faceUp, type StripModel } from './strip-model.ts';
import { referenceLeft } from './underside-cost.ts';

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
  for (const flip of FLIPS) {
    if (!model.uses[bottom]!.flips.includes(flip)) continue;
    for (const turned of model.uses[bottom]!.turns) {
      const onLeft = referenceLeft(model, bottom, flip, turned);
      for (const rip of rips) least = Math.min(least, leastOf(model, bottom, top, strip, { flip, onLeft, rip }));
      if (least === 0) return 0;
    }
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

interface Way {
  readonly flip: Flip;
  readonly onLeft: boolean;
  readonly rip: number;
}

/** mm² on the underside at least, lying one way, on the best stretch of the board. */
function leastOf(model: StripModel, bottom: number, top: number, strip: Sliding, way: Way): number {
  const board = model.boards[bottom]!;
  const { jointing } = model.problem.settings;
  const taper = { center: model.problem.centerThickness, slope: model.slope };
  const face = faceUp(board, way.flip);
  const cuts = board.defects.map((d) => {
    const [a, b] = way.onLeft
      ? [d.near - jointing - way.rip, d.far - jointing - way.rip]
      : [model.width[bottom]! + jointing - d.far - way.rip, model.width[bottom]! + jointing - d.near - way.rip];
    const depths = depthsOf(d, face, top, top + board.thickness);
    const within = [Math.max(0, a), Math.min(strip.width, b)] as const;
    return leastCut(depths, within, [strip.first, strip.last], taper, model.half);
  });
  const { starts, lengths } = model.stretches[bottom]!;
  let least = Number.POSITIVE_INFINITY;
  for (let row = 0; row < starts.length; row++) {
    let area = 0;
    for (let k = 0; k < cuts.length; k++) area += cuts[k]! * lengths[row * cuts.length + k]!;
    if (area < least) least = area;
  }
  return least;
}
