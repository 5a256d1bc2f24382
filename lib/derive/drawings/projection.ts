import { toOuter, turnOut } from '../../geometry/frame.ts';
import type { Vec3 } from '../../geometry/vec.ts';
import type { PartId } from '../../model/part.ts';
import type { Solid } from '../solids/solid.ts';
import type { PlacedSolid } from './placed-solid.ts';
import { type Skeleton, skeletonOf } from './skeleton.ts';
import { toView, type View } from './view.ts';

/** A placed solid in view coordinates. */
export interface Projection {
  readonly part: PartId;
  readonly solid: Solid;
  readonly skeleton: Skeleton;
  /** One for each vertex: right, up, toward the viewer; mm. */
  readonly points: readonly Vec3[];
  /** One for each face. */
  readonly normals: readonly Vec3[];
  /** Whether each face is turned to the viewer; one seen edge-on is not. */
  readonly front: readonly boolean[];
}

/** The sine under which a face counts as seen edge-on. */
const EDGE_ON = 1e-9;

export function project(placed: PlacedSolid, view: View): Projection {
  const { part, solid, frame } = placed;
  const normals = solid.faces.map((f) => toView(view, turnOut(frame, f.normal)));
  return {
    part,
    solid,
    skeleton: skeletonOf(solid),
    points: solid.vertices.map((p) => toView(view, toOuter(frame, p))),
    normals,
    front: normals.map((n) => n[2] > EDGE_ON),
  };
}
