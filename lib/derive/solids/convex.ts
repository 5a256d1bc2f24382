import { cross, dot, length, scale, sub, type Vec3 } from '../../geometry/vec.ts';
import { type Bounds, boundsOf, type Solid } from './solid.ts';

/** A convex body (or a flat convex piece) as separating-axis tests see it. */
export interface Convex {
  readonly points: readonly Vec3[];
  /** Unit normals of its faces, one of each opposite pair. */
  readonly normals: readonly Vec3[];
  /** Unit directions of its edges, one of each parallel family. */
  readonly edges: readonly Vec3[];
  readonly bounds: Bounds;
}

/** Directions closer than this are the same. */
const SAME = 1e-9;

/** A convex body from a closed convex solid. */
export function convexOf(solid: Solid): Convex {
  const edges: Vec3[] = [];
  for (const { loops } of solid.faces) {
    const loop = loops[0]!;
    loop.forEach((i, k) => {
      edges.push(sub(solid.vertices[loop[(k + 1) % loop.length]!]!, solid.vertices[i]!));
    });
  }
  return convex(
    solid.vertices,
    solid.faces.map((f) => f.normal),
    edges,
  );
}

/** A convex body from its points, the normals of its faces and its edges; neither need be unit or unlike. */
export const convex = (points: readonly Vec3[], normals: readonly Vec3[], edges: readonly Vec3[]): Convex => ({
  points,
  normals: unlike(normals),
  edges: unlike(edges),
  bounds: boundsOf(points),
});

/** A flat triangle. */
export function triangle(a: Vec3, b: Vec3, c: Vec3): Convex {
  const edges = [sub(b, a), sub(c, b), sub(a, c)];
  const n = cross(edges[0]!, edges[1]!);
  // Square to each side within its plane: needed when the other piece lies in the same plane.
  return convex([a, b, c], [n, ...edges.map((e) => cross(n, e))], edges);
}

/** The same body moved by a rigid motion: `turn` for directions, `move` for points. */
export const movedBy = (body: Convex, move: (p: Vec3) => Vec3, turn: (d: Vec3) => Vec3): Convex => {
  const points = body.points.map(move);
  return { points, normals: body.normals.map(turn), edges: body.edges.map(turn), bounds: boundsOf(points) };
};

function unlike(directions: readonly Vec3[]): Vec3[] {
  const kept: Vec3[] = [];
  for (const d of directions) {
    const size = length(d);
    if (!(size > SAME)) continue;
    const u = scale(d, 1 / size);
    if (!kept.some((k) => length(cross(k, u)) < SAME)) kept.push(u);
  }
  return kept;
}

/** Distance of two boxes along the axis on which they are furthest apart, mm; negative when they overlap. */
export function boxGap(a: Bounds, b: Bounds): number {
  let gap = -Infinity;
  for (const k of [0, 1, 2] as const) gap = Math.max(gap, a.min[k] - b.max[k], b.min[k] - a.max[k]);
  return gap;
}

/**
 * The largest gap between two convex bodies along any separating axis, mm: exact in sign, never above the true distance;
 * negative by the depth of the overlap. Stops early at a gap of more than `enough`.
 */
export function separation(a: Convex, b: Convex, enough = Infinity): number {
  let gap = boxGap(a.bounds, b.bounds);
  const tryAxis = (axis: Vec3): void => {
    gap = Math.max(gap, gapAlong(axis, a.points, b.points));
  };
  for (const n of a.normals) {
    if (gap > enough) return gap;
    tryAxis(n);
  }
  for (const n of b.normals) {
    if (gap > enough) return gap;
    tryAxis(n);
  }
  for (const e of a.edges) {
    for (const f of b.edges) {
      if (gap > enough) return gap;
      const axis = cross(e, f);
      const size = length(axis);
      if (size > SAME) tryAxis(scale(axis, 1 / size));
    }
  }
  return gap;
}

function gapAlong(axis: Vec3, a: readonly Vec3[], b: readonly Vec3[]): number {
  let [aMin, aMax, bMin, bMax] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const p of a) {
    const d = dot(axis, p);
    if (d < aMin) aMin = d;
    if (d > aMax) aMax = d;
  }
  for (const p of b) {
    const d = dot(axis, p);
    if (d < bMin) bMin = d;
    if (d > bMax) bMax = d;
  }
  return Math.max(aMin - bMax, bMin - aMax);
}
