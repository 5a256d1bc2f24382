import type { Vec2 } from '../../geometry/vec.ts';
import type { Cover } from './cover.ts';

/** An overlap thinner than this is none, mm. */
const THIN = 1e-3;

/** Where two covers overlap in the view plane, a little drawn in: a convex polygon, empty when they do not. */
export function overlapPolygon(a: Cover, b: Cover): Vec2[] {
  if (isBeside(a, b) || isBeside(b, a)) return [];
  let polygon: Vec2[] = a.corners.map(([x, y]) => [x, y]);
  // The sides of `a` too, so that the overlap keeps off the borders of both.
  for (const side of [...b.sides, ...a.sides]) {
    const inside = polygon.map(([x, y]) => side.a * x + side.b * y + side.c - THIN);
    if (inside.every((d) => d > 0)) continue;
    if (inside.every((d) => d <= 0)) return [];
    const kept: Vec2[] = [];
    polygon.forEach((p, k) => {
      const next = (k + 1) % polygon.length;
      const [here, there] = [inside[k]!, inside[next]!];
      if (here > 0) kept.push(p);
      if (here > 0 === there > 0) return;
      const t = here / (here - there);
      const q = polygon[next]!;
      kept.push([p[0] + (q[0] - p[0]) * t, p[1] + (q[1] - p[1]) * t]);
    });
    polygon = kept;
  }
  return polygon;
}

/** Whether a side of `a` keeps all of `b` out: most pairs, without a polygon. */
function isBeside({ sides }: Cover, { corners }: Cover): boolean {
  const [p, q, r] = corners;
  for (let k = 0; k < 3; k++) {
    const { a, b, c } = sides[k]!;
    const from = THIN - c;
    if (a * p[0] + b * p[1] <= from && a * q[0] + b * q[1] <= from && a * r[0] + b * r[1] <= from) return true;
  }
  return false;
}
