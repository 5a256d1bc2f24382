import type { Arrangement } from './arrangement.ts';
import { startsOf, undersideArea } from './defect-areas.ts';
import { FLIPS, type Flip, faceUp, type StripModel } from './strip-model.ts';

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
  return bestOf(model, i, placeOf(model, arrangement, seams, j, 'show'), [flip], [model.showStart[2 * i + flip]!]);
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
  const starts = startsOf(model.boards[i]!, model.problem.length);
  return bestOf(model, i, placeOf(model, arrangement, seams, j, 'bottom'), model.uses[i]!.flips, starts);
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

function bestOf(model: StripModel, i: number, place: Place, flips: readonly Flip[], starts: readonly number[]): Laid {
  const use = model.uses[i]!;
  let best: Laid | undefined;
  for (const flip of FLIPS) {
    if (!flips.includes(flip)) continue;
    for (const turned of inwardFirst(model, i, place, flip)) {
      if (!use.turns.includes(turned)) continue;
      for (const start of starts) {
        const laid = lay(model, i, place, { flip, turned, start });
        if (best === undefined || laid.area < best.area - 1e-12) best = laid;
        if (best.area === 0) return best;
      }
    }
  }
  if (best === undefined) throw new RangeError(`board ${model.boards[i]!.mark} may lie in no way`);
  return best;
}

/** The reference edge of a board lies left when face A is up and the board is not turned. */
const referenceLeft = (model: StripModel, i: number, flip: Flip, turned: boolean): boolean =>
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
  readonly start: number;
}

function lay(model: StripModel, i: number, place: Place, way: Way): Laid {
  const board = model.boards[i]!;
  const { problem, prices } = model;
  const usable = model.width[i]!;
  const ripOff = usable - (place.to - place.from);
  const left = place.from - leftRip(place, ripOff);
  const onLeft = referenceLeft(model, i, way.flip, way.turned);
  const { jointing } = problem.settings;
  const area = undersideArea(
    board,
    {
      faceUp: faceUp(board, way.flip),
      top: place.top,
      bottom: place.top + board.thickness,
      edge: onLeft ? left - jointing : left + usable + jointing,
      toward: onLeft ? 1 : -1,
      from: place.from,
      to: place.to,
      start: way.start,
      length: problem.length,
    },
    { center: problem.centerThickness, slope: model.slope },
  );
  const counted = prices.counted('undersideDefects', area);
  return { ...way, ripOff, area, counted, cost: prices.of.undersideDefects * counted };
}

/** mm ripped off the left side: the side away from the center line, both alike for a strip over it. */
function leftRip(place: Place, ripOff: number): number {
  if (place.from >= 0) return 0;
  return place.to <= 0 ? ripOff : ripOff / 2;
}
