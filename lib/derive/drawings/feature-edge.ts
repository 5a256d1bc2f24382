import type { Vec3 } from '../../geometry/vec.ts';
import type { Mm } from '../../units/mm.ts';
import type { Edge } from './edge.ts';
import type { Projection } from './projection.ts';

/** An edge that a view draws, in view coordinates. */
export interface FeatureEdge {
  readonly from: Vec3;
  readonly to: Vec3;
  /** Which solid it belongs to, by its place in the list. */
  readonly solid: number;
  /** One of its faces is turned to the viewer and one is not; the one that is lies to the left of `from` → `to`. */
  readonly contour: boolean;
  /** Both faces are turned away: its own solid hides it. */
  readonly behind: boolean;
}

/** The sine from which a face is turned away for certain. */
const AWAY = -1e-6;

/** Edges shorter than this in the view are seen end-on, mm. */
const END_ON = 1e-6;

/**
 * The edges of a solid that are worth a line: corners, and edges where the surface turns out of sight. A round up to
 * `arris` mm wide that lies open to the viewer has one more along its middle.
 */
export function featureEdges(of: Projection, solid: number, arris: Mm): FeatureEdge[] {
  const { skeleton, front, points, normals } = of;
  const found: FeatureEdge[] = [];
  const add = (edge: Edge, contour: boolean): void => {
    const turned = contour && front[edge.right]!;
    const from = points[turned ? edge.to : edge.from]!;
    const to = points[turned ? edge.from : edge.to]!;
    if (Math.hypot(to[0] - from[0], to[1] - from[1]) < END_ON) return;
    const behind = normals[edge.left]![2] < AWAY && normals[edge.right]![2] < AWAY;
    found.push({ from, to, solid, contour, behind });
  };
  for (const edge of skeleton.edges) {
    const contour = front[edge.left] !== front[edge.right];
    if (contour || skeleton.creases.has(edge)) add(edge, contour);
  }
  for (const { edge, faces, width } of skeleton.arrises) {
    if (width <= arris && faces.every((face) => front[face])) add(edge, false);
  }
  return found;
}
