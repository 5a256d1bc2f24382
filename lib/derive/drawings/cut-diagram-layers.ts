import type { Layer } from '../../drawing/layer.ts';
import { INKS, NARROW } from '../../drawing/layers.ts';

/** Where a part lies: an area in the color of pale wood, light enough to letter on; our convention. */
export const WOOD: Layer = {
  name: 'WOOD',
  width: NARROW,
  ink: { index: 254, rgb: '#f1e3c6' },
  linetype: 'CONTINUOUS',
};

/** What the blade takes, in the order of its numbers. */
export const CUT: Layer = { name: 'CUT', width: NARROW, ink: INKS.red, linetype: 'CONTINUOUS' };
