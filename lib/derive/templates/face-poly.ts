import type { Poly } from '../../drawing/entity.ts';
import { LAYERS } from '../../drawing/layers.ts';
import type { Outline } from '../../geometry/outline.ts';

/** A closed outline on a layer of the sheet. */
export const polyOf = (layer: keyof typeof LAYERS, outline: Outline): Poly => ({
  kind: 'poly',
  layer: LAYERS[layer],
  points: outline.map((p) => (p.bulge ? [p.x, p.y, p.bulge] : [p.x, p.y])),
  closed: true,
});
