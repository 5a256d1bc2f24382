import type { Mm } from '../../../../units/mm.ts';
import { type BlockBand, blockBand, placeOf, strike } from './band.ts';
import { type ElementPoint, elementPoints, LOWER, POINTS, unitStiffness, weigh } from './element.ts';
import { heldWays } from './held.ts';
import { type Mesh, meshOf, nodesOf } from './mesh.ts';
import type { Plate } from './plate.ts';
import { type Rigidity, rigidityOf } from './rigidity.ts';

/** A plate with its nodes numbered, its thickness taken, and its stiffness put together, supports included. */
export interface AssembledPlate {
  readonly plate: Plate;
  readonly mesh: Mesh;
  readonly rigidity: Rigidity;
  readonly points: readonly ElementPoint[];
  /** mm at the nine points of each element, column after column of elements. */
  readonly thickness: Float64Array;
  /** Unknowns that do not move: 3 × node + way. */
  readonly held: Int32Array;
  readonly stiffness: BlockBand;
}

/** @throws RangeError when a thickness or modulus is not positive, or a support misses the grid. */
export function assemblePlate(plate: Plate): AssembledPlate {
  const mesh = meshOf(plate.grid);
  const points = elementPoints(mesh);
  const rigidity = rigidityOf(plate.wood);
  const thickness = thicknessAt(plate, points);
  const stiffness = blockBand(mesh.nodes, mesh.reach);
  addElements(mesh, points, rigidity, thickness, stiffness);
  const held = heldWays(mesh, plate.supports);
  for (const way of held) strike(stiffness, way);
  return { plate, mesh, rigidity, points, thickness, held, stiffness };
}

function thicknessAt({ grid: { xs, ys }, thickness }: Plate, points: readonly ElementPoint[]): Float64Array {
  const all = new Float64Array((xs.length - 1) * (ys.length - 1) * POINTS);
  let k = 0;
  for (let i = 0; i + 1 < xs.length; i++) {
    for (let j = 0; j + 1 < ys.length; j++) {
      for (const { xi, eta } of points) {
        const [x, y] = [between(xs, i, xi), between(ys, j, eta)];
        all[k++] = sound(thickness(x, y), x, y);
      }
    }
  }
  return all;
}

function sound(thickness: Mm, x: Mm, y: Mm): Mm {
  if (thickness > 0 && thickness < Infinity) return thickness;
  throw new RangeError(`the thickness at [${x}, ${y}] is ${thickness} mm; it must be above 0 mm`);
}

/** The coordinate that lies in element k where `at` does on the stretch from -1 to 1. */
const between = (lines: Float64Array, k: number, at: number): number =>
  (lines[k]! * (1 - at) + lines[k + 1]! * (1 + at)) / 2;

function addElements(
  mesh: Mesh,
  points: readonly ElementPoint[],
  rigidity: Rigidity,
  thickness: Float64Array,
  stiffness: BlockBand,
): void {
  const { xs, ys } = mesh.grid;
  const unit = new Float64Array(LOWER * POINTS);
  const cubes = new Float64Array(POINTS);
  const own = new Float64Array(LOWER);
  const nodes = new Int32Array(4);
  let [sizeX, sizeY] = [0, 0];
  for (let i = 0, k = 0; i + 1 < xs.length; i++) {
    for (let j = 0; j + 1 < ys.length; j++, k += POINTS) {
      const [x, y] = [xs[i + 1]! - xs[i]!, ys[j + 1]! - ys[j]!];
      if (!alike(x, sizeX) || !alike(y, sizeY)) {
        [sizeX, sizeY] = [x, y];
        unitStiffness(points, rigidity, x / 2, y / 2, unit);
      }
      for (let p = 0; p < POINTS; p++) {
        const h = thickness[k + p]!;
        cubes[p] = h * h * h;
      }
      weigh(unit, cubes, own);
      nodesOf(mesh, i, j, nodes);
      addElement(stiffness, nodes, own);
    }
  }
}

/** Sizes that differ by rounding only share a stiffness. */
const alike = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-12 * a;

function addElement(band: BlockBand, nodes: Int32Array, own: Float64Array): void {
  const { values, width } = band;
  let entry = 0;
  for (let c = 0; c < 4; c++) {
    for (let row = 0; row < 3; row++) {
      for (let d = 0; d < c; d++) {
        const at = placeOf(band, nodes[c]!, nodes[d]!, row);
        values[at]! += own[entry++]!;
        values[at + 1]! += own[entry++]!;
        values[at + 2]! += own[entry++]!;
      }
      const at = placeOf(band, nodes[c]!, nodes[c]!) + row * width;
      for (let k = 0; k <= row; k++) values[at + k]! += own[entry++]!;
    }
  }
}
