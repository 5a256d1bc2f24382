import type { Vec2 } from '../../geometry/vec.ts';
import type { Mm } from '../../units/mm.ts';

/** Distance of a point from a straight line between two others. */
export function toSegment(p: Vec2, a: Vec2, b: Vec2): Mm {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const size = dx * dx + dy * dy;
  const t = size === 0 ? 0 : Math.min(1, Math.max(0, ((p[0] - a[0]) * dx + (p[1] - a[1]) * dy) / size));
  return Math.hypot(p[0] - a[0] - t * dx, p[1] - a[1] - t * dy);
}

/** Distance of two straight lines; 0 when they cross. */
export function betweenSegments([a, b]: readonly [Vec2, Vec2], [c, d]: readonly [Vec2, Vec2]): Mm {
  const side = (p: Vec2, q: Vec2, r: Vec2): number =>
    Math.sign((q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]));
  if (side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0) return 0;
  return Math.min(toSegment(a, c, d), toSegment(b, c, d), toSegment(c, a, b), toSegment(d, a, b));
}
