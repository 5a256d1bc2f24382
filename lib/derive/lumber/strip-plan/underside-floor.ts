import { leastCut } from './cut-across.ts';
import { leastArea, type Stretches } from './defect-areas.ts';
import type { Flip } from './faces.ts';
import type { Lying } from './lying.ts';
import { MM2_PER_DM2 } from './prices.ts';
import type { StripPart } from './sliding.ts';
import type { StripModel } from './strip-model.ts';

/** A board in its strip. */
export interface Layer {
  readonly board: number;
  /** Its side, when that is settled. */
  readonly flip: Flip | undefined;
  readonly stretches: Stretches;
  /** mm, depth of its upper face below the finished show face. */
  readonly top: number;
}

/** What a show board with a side up is as a layer. */
export function showLayer(model: StripModel, board: number, flip: Flip): Layer {
  const stretches = model.showStretches[2 * board + flip]!;
  return { board, flip, stretches, top: -model.problem.settings.cleanUp / 2 };
}

/** What a bottom board under a show board is as a layer. */
export function bottomLayer(model: StripModel, board: number, show: number): Layer {
  const top = model.thick[show]! - model.problem.settings.cleanUp / 2;
  return { board, flip: undefined, stretches: model.stretches[board]!, top };
}

/** What a board costs at least by its defects on the underside, its strip lying in any of some places. */
export function undersideFloor(model: StripModel, layer: Layer, places: readonly StripPart[]): number {
  const price = model.prices.of.undersideDefects;
  const { board, flip } = layer;
  if (price === 0) return 0;
  let least = Number.POSITIVE_INFINITY;
  for (const way of model.lying[board]!) {
    if (flip !== undefined && way.flip !== flip) continue;
    for (const place of places) {
      least = Math.min(least, leastOf(model, layer, way, place));
      if (least === 0) return 0;
    }
  }
  return price * model.prices.counted('undersideDefects', least / MM2_PER_DM2);
}

/** mm² on the underside at least, lying one way, on the best stretch of the board. */
function leastOf(model: StripModel, { top, stretches }: Layer, way: Lying, part: StripPart): number {
  const { cuts, taper } = model;
  const count = way.near.length;
  for (let k = 0; k < count; k++) {
    const x0 = Math.max(0, way.near[k]! - part.rip);
    const x1 = Math.min(part.width, way.far[k]! - part.rip);
    cuts[k] = leastCut(top + way.least[k]!, top + way.most[k]!, x0, x1, part, taper);
  }
  return leastArea(cuts, count, stretches);
}
