import type { OutlinePoint } from '../../geometry/outline.ts';
import type { Vec3 } from '../../geometry/vec.ts';
import { face, type Solid } from './solid.ts';

/** Surfaces of a swept outline that are not named by the outline itself. */
export interface PrismSurfaces {
  readonly near: string;
  readonly far: string;
}

/**
 * The solid between two outlines of the same number of points, facet by facet; `lift` puts an outline point into space at
 * its distance along the sweep. (x, y, sweep) must be right-handed after the lift.
 *
 * Handled: straight segments, each parallel to its partner. Not handled: arcs (facet the outline first), twisted walls.
 */
export function sweep(
  near: readonly OutlinePoint[],
  far: readonly OutlinePoint[],
  length: number,
  lift: (x: number, y: number, along: number) => Vec3,
  surfaces: PrismSurfaces,
): Solid {
  if (near.length !== far.length) {
    throw new RangeError(`the far outline has ${far.length} points, the near one ${near.length}; they must match`);
  }
  const n = near.length;
  const vertices = [...near.map((p) => lift(p.x, p.y, 0)), ...far.map((p) => lift(p.x, p.y, length))];
  const ring = near.map((_, i) => i);
  const faces = near.map((p, i) => {
    const j = (i + 1) % n;
    return face(vertices, p.surface ?? `side.${i}`, [i, j, n + j, n + i]);
  });
  faces.push(face(vertices, surfaces.near, [...ring].reverse()));
  faces.push(
    face(
      vertices,
      surfaces.far,
      ring.map((i) => i + n),
    ),
  );
  return { vertices, faces };
}
