import { dot, type Vec3 } from '../../geometry/vec.ts';
import type { Projection } from './projection.ts';

/** A side of a triangle in the view plane: a·x + b·y + c is the distance from it, mm, positive inside the triangle. */
export interface Side {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  /** A point that is covered lies more than this inside. */
  readonly least: number;
}

/** A triangle turned to the viewer: what lies behind it is hidden. */
export interface Cover {
  /** Which solid it belongs to, and which face of it, by their places in the lists. */
  readonly solid: number;
  readonly face: number;
  /** View coordinates, counter-clockwise. */
  readonly corners: readonly [Vec3, Vec3, Vec3];
  readonly sides: readonly [Side, Side, Side];
  /** Its plane is normal · p = offset; the normal points to the viewer. */
  readonly normal: Vec3;
  readonly offset: number;
  /** Depth of its nearest corner. */
  readonly nearest: number;
}

/** Points closer than this to a plane lie on it, mm: coarser than rounding, finer than any line. */
export const ON = 1e-5;

/**
 * The triangles of a solid that are turned to the viewer.
 *
 * A side beyond which the surface goes on, still turned to the viewer, belongs to the cover; a side that is an outline
 * does not. So nothing shines through between two triangles, and a line that runs exactly behind an outline counts as
 * visible: it is the same line on paper.
 */
export function coversOf(of: Projection, solid: number): Cover[] {
  return of.skeleton.triangles.flatMap(({ face, corners, beyond }) => {
    if (!of.front[face]) return [];
    const least = beyond.map((next) => (of.front[next] ? -ON : ON));
    const points = corners.map((index) => of.points[index]!) as [Vec3, Vec3, Vec3];
    return [coverOf(points, of.normals[face]!, { solid, face }, least as [number, number, number])];
  });
}

/** A triangle with the normal of its face. `least` is how far inside each side a point must lie to be covered. */
export function coverOf(
  corners: Cover['corners'],
  normal: Vec3,
  of: { readonly solid: number; readonly face: number },
  least: readonly [number, number, number],
): Cover {
  const [p, q, r] = corners;
  return {
    ...of,
    corners,
    sides: [side(p, q, least[0]), side(q, r, least[1]), side(r, p, least[2])],
    normal,
    offset: dot(normal, p),
    nearest: Math.max(p[2], q[2], r[2]),
  };
}

function side(p: Vec3, q: Vec3, least: number): Side {
  const [x, y] = [q[0] - p[0], q[1] - p[1]];
  const size = Math.hypot(x, y) || 1;
  const [a, b] = [-y / size, x / size];
  return { a, b, c: -(a * p[0] + b * p[1]), least };
}

/** Depth of the plane of a cover over a point of the view plane, mm toward the viewer. */
export const depthAt = ({ normal, offset }: Cover, x: number, y: number): number =>
  (offset - normal[0] * x - normal[1] * y) / normal[2];
