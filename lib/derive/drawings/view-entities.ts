import type { Poly } from '../../drawing/entity.ts';
import { LAYERS } from '../../drawing/layers.ts';
import { type Chain, chainsOf } from './chains.ts';
import type { ViewLine } from './view-line.ts';

/** The lines of a view as polylines on the layers of a drawing; mm, in view coordinates. Hidden lines come first. */
export function viewEntities(lines: readonly ViewLine[]): Poly[] {
  const hidden = lines.filter((line) => line.kind === 'hidden');
  const visible = lines.filter((line) => line.kind === 'visible');
  const poly =
    (layer: Poly['layer']) =>
    ({ points, closed }: Chain): Poly => ({ kind: 'poly', layer, points, closed });
  return [
    ...chainsOf(hidden, 'curves').map(poly(LAYERS.HIDDEN)),
    ...chainsOf(visible, 'corners').map(poly(LAYERS.OUTLINE)),
  ];
}
