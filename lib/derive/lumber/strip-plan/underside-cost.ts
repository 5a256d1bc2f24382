import type { Arrangement } from './arrangement.ts';
import { cutAcross } from './cut-across.ts';
import { leastArea, rowArea, type Stretches } from './defect-areas.ts';
import type { Flip } from './faces.ts';
import { type Lying, referenceLeft } from './lying.ts';
import { MM2_PER_DM2 } from './prices.ts';
import type { StripModel } from './strip-model.ts';

/** How a board lies once its strip has its place. */
export interface Laid {
  readonly flip: Flip;
  readonly turned: boolean;
  /** mm from the board's reference end to where the top begins to be cut from it. */
  readonly start: number;
  /** mm off the side away from the center line. */
  readonly ripOff: number;
  /** dm² of defects on the underside. */
  readonly area: number;
}

/** The end for end of least underside defects for a show board; the thicker edge goes inwards when nothing else decides. */
export function layShow(model: StripModel, a: Arrangement, seams: Float64Array, j: number, flip: Flip): Laid {
  const i = a.shows[j]!;
  const ways = model.lying[i]!.filter((way) => way.flip === flip);
  return bestOf(model, i, showPlace(model, seams, j), ways, model.showStretches[2 * i + flip]!);
}

/** Side, end and stretch of a bottom board that leave the least defects on the underside. */
export function layBottom(model: StripModel, a: Arrangement, seams: Float64Array, j: number): Laid | undefined {
  const i = a.bottoms[j]!;
  if (i < 0) return undefined;
  return bestOf(model, i, bottomPlace(model, a, seams, j), model.lying[i]!, model.stretches[i]!);
}

/** dm² of defects on the underside of a show board with a side up, as they count. */
export function showUnderside(model: StripModel, a: Arrangement, seams: Float64Array, j: number, flip: Flip): number {
  const i = a.shows[j]!;
  if (model.boards[i]!.defects.length === 0) return 0;
  const place = showPlace(model, seams, j);
  return counted(model, leastOf(model, i, place, model.lying[i]!, flip, model.showStretches[2 * i + flip]!));
}

/** dm² of defects on the underside of the bottom board of a strip, as they count. */
export function bottomUnderside(model: StripModel, a: Arrangement, seams: Float64Array, j: number): number {
  const i = a.bottoms[j]!;
  if (i < 0 || model.boards[i]!.defects.length === 0) return 0;
  const place = bottomPlace(model, a, seams, j);
  return counted(model, leastOf(model, i, place, model.lying[i]!, undefined, model.stretches[i]!));
}

const counted = (model: StripModel, area: number): number =>
  model.prices.counted('undersideDefects', area / MM2_PER_DM2);

/** Depth of a board's upper face below the finished show face, and the seams of its strip; mm. */
interface Place {
  readonly top: number;
  readonly from: number;
  readonly to: number;
}

function showPlace(model: StripModel, seams: Float64Array, j: number): Place {
  return { top: -model.problem.settings.cleanUp / 2, from: seams[j]!, to: seams[j + 1]! };
}

function bottomPlace(model: StripModel, a: Arrangement, seams: Float64Array, j: number): Place {
  const top = model.thick[a.shows[j]!]! - model.problem.settings.cleanUp / 2;
  return { top, from: seams[j]!, to: seams[j + 1]! };
}

/** mm² left on the underside at least, in any of the ways, or in those with one side up. */
function leastOf(
  model: StripModel,
  i: number,
  place: Place,
  ways: readonly Lying[],
  flip: Flip | undefined,
  stretches: Stretches,
): number {
  let least = Number.POSITIVE_INFINITY;
  for (let w = 0; w < ways.length && least > 0; w++) {
    const way = ways[w]!;
    if (flip !== undefined && way.flip !== flip) continue;
    if (!fillCuts(model, i, place, way)) return 0;
    least = Math.min(least, leastArea(model.cuts, way.near.length, stretches));
  }
  return least;
}

/** The best way to lie, of those alike the one that brings the thicker edge inwards, then the first. */
function bestOf(model: StripModel, i: number, place: Place, ways: readonly Lying[], stretches: Stretches): Laid {
  let best: Laid | undefined;
  for (const way of inwardFirst(model, i, place, ways)) {
    fillCuts(model, i, place, way);
    stretches.starts.forEach((start, row) => {
      const area = rowArea(model.cuts, way.near.length, stretches, row) / MM2_PER_DM2;
      if (best !== undefined && area >= best.area - 1e-12) return;
      best = { flip: way.flip, turned: way.turned, start, ripOff: model.width[i]! - (place.to - place.from), area };
    });
  }
  if (best === undefined) throw new RangeError(`board ${model.boards[i]!.mark} may lie in no way`);
  return best;
}

/** The ways with a side up, each end for end: first the one that brings the thicker edge toward the center line. */
function inwardFirst(model: StripModel, i: number, place: Place, ways: readonly Lying[]): readonly Lying[] {
  const board = model.boards[i]!;
  const { corners } = board;
  const middle = (place.from + place.to) / 2;
  if (corners === undefined || middle === 0) return ways;
  const near = Math.min(corners[0], corners[2]);
  const far = Math.min(corners[1], corners[3]);
  if (near === far) return ways;
  const inward = ({ flip, turned }: Lying): boolean => {
    const thickLeft = near > far === referenceLeft(board, flip, turned);
    return thickLeft === middle > 0;
  };
  return [...ways].sort((a, b) => a.flip - b.flip || Number(inward(b)) - Number(inward(a)));
}

/** Writes mm across on the underside of each defect of a board into `model.cuts`; false when there is none. */
function fillCuts(model: StripModel, i: number, { top, from, to }: Place, way: Lying): boolean {
  const { cuts, taper } = model;
  const left = from - leftRip(from, to, model.width[i]! - (to - from));
  let any = false;
  for (let k = 0; k < way.near.length; k++) {
    const x0 = Math.max(from, left + way.near[k]!);
    const x1 = Math.min(to, left + way.far[k]!);
    const cut = x1 <= x0 ? 0 : cutAcross(top + way.least[k]!, top + way.most[k]!, x0, x1, taper);
    cuts[k] = cut;
    if (cut > 0) any = true;
  }
  return any;
}

/** A seam this near to the center line lies on it, mm (rounding). */
const ON_LINE = 1e-6;

/** mm ripped off the left side: the side away from the center line, both alike for a strip over it. */
export function leftRip(from: number, to: number, ripOff: number): number {
  if (from >= -ON_LINE) return 0;
  return to <= ON_LINE ? ripOff : ripOff / 2;
}
