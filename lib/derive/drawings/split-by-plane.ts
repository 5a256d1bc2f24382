import { dot, type Vec3 } from '../../geometry/vec.ts';
import { type Cover, coverOf } from './cover.ts';

/** Corners closer than this to the plane lie on it, mm. */
const ON_PLANE = 1e-6;

/** A triangle cut by the plane of another: two or three triangles; itself when the plane misses it. */
export function splitByPlane(cover: Cover, plane: Cover): Cover[] {
  const height = cover.corners.map((p) => {
    const d = dot(plane.normal, p) - plane.offset;
    return Math.abs(d) < ON_PLANE ? 0 : d;
  });
  if (!(height.some((d) => d > 0) && height.some((d) => d < 0))) return [cover];
  const side = (sign: 1 | -1): Cover[] => {
    const kept: Vec3[] = [];
    cover.corners.forEach((p, k) => {
      const next = (k + 1) % 3;
      const [here, there] = [height[k]! * sign, height[next]! * sign];
      if (here >= 0) kept.push(p);
      if (here * there < 0) kept.push(between(p, cover.corners[next]!, here / (here - there)));
    });
    return kept.slice(2).map((p, k) => coverOf([kept[0]!, kept[k + 1]!, p], cover.normal, cover));
  };
  return [...side(1), ...side(-1)];
}

const between = (p: Vec3, q: Vec3, t: number): Vec3 => [
  p[0] + (q[0] - p[0]) * t,
  p[1] + (q[1] - p[1]) * t,
  p[2] + (q[2] - p[2]) * t,
];
