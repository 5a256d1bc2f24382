import type { PlacedSolid } from '../../lib/derive/drawings/placed-solid.ts';
import { triangulateFace } from '../../lib/derive/solids/triangulate.ts';
import { toOuter, turnOut } from '../../lib/geometry/frame.ts';
import { add, cross, dot, scale, sub, type Vec3 } from '../../lib/geometry/vec.ts';

interface Facet {
  readonly part: string;
  readonly corners: readonly [Vec3, Vec3, Vec3];
  /** Of the face, in the outer frame. */
  readonly normal: Vec3;
}

export interface Hit extends Facet {
  readonly distance: number;
}

/** Casts rays at every triangle of every solid: slow and plain, to judge what is clever. */
export function rayCaster(solids: readonly PlacedSolid[]): (from: Vec3, direction: Vec3) => Hit | undefined {
  const facets = solids.flatMap(({ part, solid, frame }) => {
    const points = solid.vertices.map((p) => toOuter(frame, p));
    return solid.faces.flatMap((f): Facet[] => {
      const corners: number[] = [];
      triangulateFace(solid.vertices, f, corners);
      const normal = turnOut(frame, f.normal);
      return Array.from({ length: corners.length / 3 }, (_, t) => {
        const [a, b, c] = [points[corners[3 * t]!]!, points[corners[3 * t + 1]!]!, points[corners[3 * t + 2]!]!];
        return { part, corners: [a, b, c], normal };
      });
    });
  });
  return (from, direction) => {
    let best: Hit | undefined;
    for (const facet of facets) {
      const distance = meet(facet.corners, from, direction);
      if (distance > 1e-5 && distance < (best?.distance ?? Infinity)) best = { ...facet, distance };
    }
    return best;
  };
}

/** Distance along a ray to a triangle; NaN when it misses. */
function meet([a, b, c]: Facet['corners'], from: Vec3, direction: Vec3): number {
  const normal = cross(sub(b, a), sub(c, a));
  const distance = dot(normal, sub(a, from)) / dot(normal, direction);
  if (!Number.isFinite(distance)) return Number.NaN;
  const p = add(from, scale(direction, distance));
  const size = Math.sqrt(dot(normal, normal));
  const inside = [
    [a, b],
    [b, c],
    [c, a],
  ].every(([u, v]) => dot(normal, cross(sub(v!, u!), sub(p, u!))) >= -1e-9 * size * size);
  return inside ? distance : Number.NaN;
}
