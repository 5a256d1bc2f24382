import type { Layer } from '../../drawing/layer.ts';

/** The line widths a DXF file can hold, in hundredths of a millimetre (DXF reference, group 370). */
const WEIGHTS = new Set([
  0, 5, 9, 13, 15, 18, 20, 25, 30, 35, 40, 50, 53, 60, 70, 80, 90, 100, 106, 120, 140, 158, 200, 211,
]);

/** @throws RangeError when the format has no such width. */
export function lineWeight(layer: Layer): number {
  const weight = Math.round(layer.width * 100);
  if (!WEIGHTS.has(weight) || Math.abs(weight - layer.width * 100) > 1e-6) {
    throw new RangeError(
      `layer ${layer.name} is ${layer.width} mm wide; a DXF file has 0.13 0.18 0.25 0.35 0.5 0.7 1 mm and a few more`,
    );
  }
  return weight;
}

/** The line width that the dashes of the linetype table are made for; other layers carry a factor on their entities. */
export const DASH_WIDTH = 0.25;

/** How much longer the dashes of a layer are than those in the table; nothing to say for unbroken lines. */
export const dashFactor = (layer: Layer): number => (layer.linetype === 'CONTINUOUS' ? 1 : layer.width / DASH_WIDTH);
