import type { Vec2 } from '../../../../geometry/vec.ts';
import type { Mm } from '../../../../units/mm.ts';
import { elementAt, elementsAt, type Spot } from './element-at.ts';
import { nodesOf } from './mesh.ts';
import { ELEMENT_WAYS, emptyShapes, type Shapes, shapesAt, wayScale } from './shape.ts';
import type { PlateField } from './solve.ts';

/** How far a point goes down. @throws RangeError when it lies beside the plate. */
export function deflectionAt({ plate: { mesh }, moves }: PlateField, at: Vec2): Mm {
  const spot = elementAt(mesh.grid, at);
  const shapes = shapesAt(mesh, spot.xi, spot.eta, emptyShapes());
  return weighted(moves, nodesUnder(mesh, spot), spot, shapes.down);
}

/** How a plate is bent at a point, 1/mm. */
export interface Curvature {
  /** w_xx, w_yy and w_xy. */
  readonly along: number;
  readonly across: number;
  readonly twist: number;
}

/** Curvature at a point; on a grid line and at a node the mean of the elements that meet there. */
export function curvatureAt({ plate: { mesh }, moves }: PlateField, at: Vec2): Curvature {
  const sum = { along: 0, across: 0, twist: 0 };
  const shapes = emptyShapes();
  const spots = elementsAt(mesh.grid, at);
  for (const spot of spots) {
    const { halfX, halfY } = spot;
    shapesAt(mesh, spot.xi, spot.eta, shapes);
    const nodes = nodesUnder(mesh, spot);
    const part = (of: keyof Shapes): number => weighted(moves, nodes, spot, shapes[of]) / spots.length;
    sum.along += part('along') / halfX ** 2;
    sum.across += part('across') / halfY ** 2;
    sum.twist += part('twist') / (halfX * halfY);
  }
  return sum;
}

function nodesUnder(mesh: PlateField['plate']['mesh'], { column, row }: Spot): Int32Array {
  const nodes = new Int32Array(4);
  nodesOf(mesh, column, row, nodes);
  return nodes;
}

function weighted(moves: Float64Array, nodes: Int32Array, { halfX, halfY }: Spot, shape: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < ELEMENT_WAYS; k++) {
    sum += shape[k]! * wayScale(k, halfX, halfY) * moves[3 * nodes[(k - (k % 3)) / 3]! + (k % 3)]!;
  }
  return sum;
}
