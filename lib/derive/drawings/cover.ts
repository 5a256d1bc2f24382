import { dot, type Vec3 } from '../../geometry/vec.ts';
import type { Projection } from './projection.ts';

/** A side of a triangle in the view plane: a·x + b·y + c is the distance from it, mm, positive inside the triangle. */
interface Side {
  readonly a: number;
  readonly b: number;
  readonly c: number;
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

/** The triangles of a solid that are turned to the viewer. */
export function coversOf(of: Projection, solid: number): Cover[] {
  return of.skeleton.triangles.flatMap(({ face, corners: [p, q, r] }) =>
    of.front[face] ? [coverOf([of.points[p]!, of.points[q]!, of.points[r]!], of.normals[face]!, { solid, face })] : [],
  );
}

/** A triangle with the normal of its face. */
export function coverOf(
  corners: Cover['corners'],
  normal: Vec3,
  of: { readonly solid: number; readonly face: number },
): Cover {
  const [p, q, r] = corners;
  return {
    solid: of.solid,
    face: of.face,
    corners,
    sides: [side(p, q), side(q, r), side(r, p)],
    normal,
    offset: dot(normal, p),
    nearest: Math.max(p[2], q[2], r[2]),
  };
}

function side(p: Vec3, q: Vec3): Side {
  const [x, y] = [q[0] - p[0], q[1] - p[1]];
  const size = Math.hypot(x, y) || 1;
  const [a, b] = [-y / size, x / size];
  return { a, b, c: -(a * p[0] + b * p[1]) };
}

/** Depth of the plane of a cover over a point of the view plane, mm toward the viewer. */
export const depthAt = ({ normal, offset }: Cover, x: number, y: number): number =>
  (offset - normal[0] * x - normal[1] * y) / normal[2];
