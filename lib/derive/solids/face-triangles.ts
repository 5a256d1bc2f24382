import type { Solid } from './solid.ts';
import { type Triangles, triangulateFace } from './triangulate.ts';

/** The triangles of a solid, face after face. */
export interface FaceTriangles {
  /** Three vertex indices a triangle; not to be changed. */
  readonly corners: Triangles;
  /** For each face how many numbers of `corners` stand before its own; at the end how many there are. */
  readonly starts: readonly number[];
}

const known = new WeakMap<Solid, { vertices: number; faces: number; made: FaceTriangles }>();

/** The triangles of a solid, made once for all who ask; a pocket cut in between makes them new. */
export function faceTriangles(solid: Solid): FaceTriangles {
  const before = known.get(solid);
  if (before?.vertices === solid.vertices.length && before.faces === solid.faces.length) return before.made;
  const corners: Triangles = [];
  const starts = [0];
  for (const f of solid.faces) {
    triangulateFace(solid.vertices, f, corners);
    starts.push(corners.length);
  }
  const made = { corners, starts };
  known.set(solid, { vertices: solid.vertices.length, faces: solid.faces.length, made });
  return made;
}
