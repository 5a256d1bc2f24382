import type { Spot } from './element-at.ts';
import { type Mesh, nodesOf } from './mesh.ts';
import { ELEMENT_WAYS, emptyShapes, type Shapes, shapesAt, wayScale } from './shape.ts';

/** Room for the forces on one element after the other, and the nodes that get them. */
export interface ElementLoads {
  readonly mesh: Mesh;
  /** N and N mm on the nodes, three a node. */
  readonly all: Float64Array;
  /** On the element at hand. */
  readonly own: Float64Array;
  readonly nodes: Int32Array;
  readonly shapes: Shapes;
}

export const elementLoads = (mesh: Mesh): ElementLoads => ({
  mesh,
  all: new Float64Array(3 * mesh.nodes),
  own: new Float64Array(ELEMENT_WAYS),
  nodes: new Int32Array(4),
  shapes: emptyShapes(),
});

/** A force in N at a point of the element at hand. */
export function addForce({ own }: ElementLoads, { down }: Shapes, force: number): void {
  for (let k = 0; k < ELEMENT_WAYS; k++) own[k]! += force * down[k]!;
}

/** Gives what was added to the nodes of an element and begins anew. */
export function handOver(loads: ElementLoads, { column, row, halfX, halfY }: Omit<Spot, 'xi' | 'eta'>): void {
  const { mesh, all, own, nodes } = loads;
  nodesOf(mesh, column, row, nodes);
  for (let c = 0, k = 0; c < 4; c++) {
    for (let way = 0; way < 3; way++, k++) all[3 * nodes[c]! + way]! += own[k]! * wayScale(way, halfX, halfY);
  }
  own.fill(0);
}

/** A force in N on one spot. */
export function push(loads: ElementLoads, spot: Spot, force: number): void {
  addForce(loads, shapesAt(loads.mesh, spot.xi, spot.eta, loads.shapes), force);
  handOver(loads, spot);
}
