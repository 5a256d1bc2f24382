import type { Mm } from '../../../units/mm.ts';
import type { BarSection } from './frame-model.ts';
import { torsionConstant } from './twist.ts';

/** Section of a rectangular piece by its sizes along the y and z axis of the member. */
export function rectangleSection(alongY: Mm, alongZ: Mm): BarSection {
  return {
    area: alongY * alongZ,
    iy: (alongY * alongZ ** 3) / 12,
    iz: (alongZ * alongY ** 3) / 12,
    j: torsionConstant(alongY, alongZ),
  };
}
