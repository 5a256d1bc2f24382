import type { Mm } from '../../../../units/mm.ts';
import { GAUSS_3 } from '../gauss.ts';
import type { AssembledPlate } from './assemble.ts';
import { POINTS } from './element.ts';
import { spotIn } from './element-at.ts';
import { addForce, type ElementLoads, handOver, push } from './element-loads.ts';
import { SAME_LINE } from './grid.ts';
import type { PlateArea } from './plate.ts';

/** Pressure everywhere, MPa from the thickness at each point of each element. */
export function addOnPoints(
  { mesh, points, thickness }: AssembledPlate,
  pressure: (thickness: Mm) => number,
  loads: ElementLoads,
): void {
  const { xs, ys } = mesh.grid;
  for (let column = 0, k = 0; column + 1 < xs.length; column++) {
    const halfX = (xs[column + 1]! - xs[column]!) / 2;
    for (let row = 0; row + 1 < ys.length; row++, k += POINTS) {
      const halfY = (ys[row + 1]! - ys[row]!) / 2;
      for (let p = 0; p < POINTS; p++) {
        const { weight, shapes } = points[p]!;
        addForce(loads, shapes, pressure(thickness[k + p]!) * weight * halfX * halfY);
      }
      handOver(loads, { column, row, halfX, halfY });
    }
  }
}

/**
 * Even pressure in MPa on the part of each element that an area covers; exact wherever the area ends.
 *
 * @throws RangeError when the area sticks out of the plate.
 */
export function addOverArea(pressure: number, { from, to }: PlateArea, loads: ElementLoads): void {
  const { grid } = loads.mesh;
  const { points, weights } = GAUSS_3;
  const rows = covered(grid.ys, from[1], to[1]);
  for (const x of covered(grid.xs, from[0], to[0])) {
    for (const y of rows) {
      const quarter = pressure * x.half * y.half;
      for (let k = 0; k < POINTS; k++) {
        const [i, j] = [Math.floor(k / 3), k % 3];
        const spot = spotIn(grid, x.gap, y.gap, x.middle + points[i]! * x.half, y.middle + points[j]! * y.half);
        push(loads, spot, quarter * weights[i]! * weights[j]!);
      }
    }
  }
}

interface Covered {
  readonly gap: number;
  readonly middle: Mm;
  readonly half: Mm;
}

function covered(lines: Float64Array, from: Mm, to: Mm): Covered[] {
  const [first, last] = [lines[0]!, lines.at(-1)!];
  if (!(from < to && from >= first - SAME_LINE && to <= last + SAME_LINE)) {
    throw new RangeError(`a load from ${from} to ${to} mm does not lie on the plate, ${first} to ${last} mm`);
  }
  const spans: Covered[] = [];
  for (let gap = 0; gap + 1 < lines.length; gap++) {
    const low = Math.max(from, lines[gap]!);
    const high = Math.min(to, lines[gap + 1]!);
    if (low < high) spans.push({ gap, middle: (low + high) / 2, half: (high - low) / 2 });
  }
  return spans;
}
