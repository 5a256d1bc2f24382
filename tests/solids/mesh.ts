import type { Vec3 } from '../../lib/geometry/vec.ts';
import type { Triangle } from '../readers/stl.ts';

/** A surface of triangles that share their corners. */
export interface Mesh {
  readonly vertices: readonly Vec3[];
  /** Three indices a triangle. */
  readonly triangles: readonly number[];
}

/** Triangles as a file holds them, each with corners of its own, joined where corners are the same to the last bit. */
export function joined(soup: readonly Triangle[]): Mesh {
  const known = new Map<string, number>();
  const vertices: Vec3[] = [];
  const triangles = soup.flat().map((p) => {
    const key = p.join();
    const index = known.get(key) ?? vertices.push(p) - 1;
    known.set(key, index);
    return index;
  });
  return { vertices, triangles };
}

// Faults to plant: what a writer or a triangulation may do wrong.

export const withoutTriangle = ({ vertices, triangles }: Mesh): Mesh => ({ vertices, triangles: triangles.slice(3) });

export const withFlippedTriangle = ({ vertices, triangles: [a, b, c, ...rest] }: Mesh): Mesh => ({
  vertices,
  triangles: [a!, c!, b!, ...rest],
});

export const insideOut = ({ vertices, triangles }: Mesh): Mesh => ({ vertices, triangles: triangles.toReversed() });
