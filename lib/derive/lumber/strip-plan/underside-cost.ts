import type { Arrangement } from './arrangement.ts';
import { cutAcross, depthsOf } from './cut-across.ts';
import { type Stretches, stretchesOf } from './defect-areas.ts';
import { MM2_PER_DM2 } from './prices.ts';
import { type Flip, faceUp, type StripModel } from './strip-model.ts';

/** How a board lies once its strip has its place. */
export interface Laid {
  readonly flip: Flip;
  readonly turned: boolean;
  /** mm from the board's reference end to where the top begins to be cut from it. */
  readonly start: number;
  /** mm off the side away from the center line. */
  readonly ripOff: number;
  /** dm² of defects on the underside, as they are and as they count. */
  readonly area: number;
  readonly counted: number;
  readonly cost: number;
}

/** The end for end of least underside defects for a show board; the thicker edge goes inwards when nothing else decides. */
export function layShow(model: StripModel, arrangement: Arrangement, seams: Float64Array, j: number, flip: Flip): Laid {
  const i = arrangement.shows[j]!;
  const start = model.showStart[2 * i + flip]!;
  const stretches = stretchesOf(model.boards[i]!, model.problem.length, [start]);
  return bestOf(model, i, placeOf(model, arrangement, seams, j, 'show'), [flip], stretches);
}

/** Side, end and stretch of a bottom board that leave the least defects on the underside. */
export function layBottom(
  model: StripModel,
  arrangement: Arrangement,
  seams: Float64Array,
  j: number,
): Laid | undefined {
  const i = arrangement.bottoms[j]!;
  if (i < 0) return undefined;
  return bestOf(model, i, placeOf(model, arrangement, seams, j, 'bottom'), model.uses[i]!.flips, model.stretches[i]!);
}

interface Place {
  readonly top: number;
  readonly from: number;
  readonly to: number;
}

function placeOf(model: StripModel, a: Arrangement, seams: Float64Array, j: number, layer: 'show' | 'bottom'): Place {
  const skim = model.problem.settings.cleanUp / 2;
  const top = layer === 'show' ? -skim : model.thick[a.shows[j]!]! - skim;
  return { top, from: seams[j]!, to: seams[j + 1]! };
}

function bestOf(model: StripModel, i: number, place: Place, flips: readonly Flip[], stretches: Stretches): Laid {
  let best: Laid | undefined;
  for (const flip of flips) {
    for (const turned of inwardFirst(model, i, place, flip)) {
      if (!model.uses[i]!.turns.includes(turned)) continue;
      const laid = bestStretch(model, i, place, { flip, turned }, stretches, best?.area ?? Number.POSITIVE_INFINITY);
      if (laid !== undefined) best = laid;
      if (best?.area === 0) return best;
    }
  }
  if (best === undefined) throw new RangeError(`board ${model.boards[i]!.mark} may lie in no way`);
  return best;
}

/** The reference edge of a board lies left when face A is up and the board is not turned. */
export const referenceLeft = (model: StripModel, i: number, flip: Flip, turned: boolean): boolean =>
  (faceUp(model.boards[i]!, flip) === 'A') !== turned;

/** Both ends for end, first the one that brings the thicker edge toward the center line. */
function inwardFirst(model: StripModel, i: number, place: Place, flip: Flip): readonly boolean[] {
  const corners = model.boards[i]!.corners;
  const middle = (place.from + place.to) / 2;
  if (corners === undefined || middle === 0) return [false, true];
  const near = Math.min(corners[0], corners[2]);
  const far = Math.min(corners[1], corners[3]);
  if (near === far) return [false, true];
  const thickLeft = near > far === referenceLeft(model, i, flip, false);
  return thickLeft === middle > 0 ? [false, true] : [true, false];
}

interface Way {
  readonly flip: Flip;
  readonly turned: boolean;
}

/** The stretch of a board, lying one way, that leaves less than `below` on the underside, and least of all. */
function bestStretch(
  model: StripModel,
  i: number,
  place: Place,
  way: Way,
  { starts, lengths }: Stretches,
  below: number,
): Laid | undefined {
  const cuts = cutsOf(model, i, place, way);
  let [best, least] = [-1, below - 1e-12];
  starts.forEach((_, row) => {
    let area = 0;
    for (let k = 0; k < cuts.length; k++) area += cuts[k]! * lengths[row * cuts.length + k]!;
    if (area / MM2_PER_DM2 < least) [best, least] = [row, area / MM2_PER_DM2];
  });
  if (best < 0) return undefined;
  const ripOff = model.width[i]! - (place.to - place.from);
  const counted = model.prices.counted('undersideDefects', least);
  return {
    ...way,
    start: starts[best]!,
    ripOff,
    area: least,
    counted,
    cost: model.prices.of.undersideDefects * counted,
  };
}

/** mm across on the underside of each defect of a board. */
function cutsOf(model: StripModel, i: number, place: Place, { flip, turned }: Way): number[] {
  const board = model.boards[i]!;
  const { problem } = model;
  const { jointing } = problem.settings;
  const usable = model.width[i]!;
  const left = place.from - leftRip(place, usable - (place.to - place.from));
  const taper = { center: problem.centerThickness, slope: model.slope };
  const onLeft = referenceLeft(model, i, flip, turned);
  return board.defects.map((d) => {
    const [a, b] = onLeft
      ? [left - jointing + d.near, left - jointing + d.far]
      : [left + usable + jointing - d.far, left + usable + jointing - d.near];
    const depths = depthsOf(d, faceUp(board, flip), place.top, place.top + board.thickness);
    return cutAcross(depths, Math.max(place.from, a), Math.min(place.to, b), taper);
  });
}

/** mm ripped off the left side: the side away from the center line, both alike for a strip over it. */
function leftRip(place: Place, ripOff: number): number {
  if (place.from >= 0) return 0;
  return place.to <= 0 ? ripOff : ripOff / 2;
}
