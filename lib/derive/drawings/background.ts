import type { Vec3 } from '../../geometry/vec.ts';
import { overlap } from './clip-edge.ts';
import { type Cover, depthAt } from './cover.ts';
import type { CoverGrid } from './cover-grid.ts';
import type { FeatureEdge } from './feature-edge.ts';
import type { Interval } from './interval.ts';

/** How far beside a contour one looks at what is behind it, mm. */
const BESIDE = 0.01;

/** A stretch of a contour and the solid seen just beyond it; -1 when there is none. */
export interface Backed {
  readonly stretch: Interval;
  readonly solid: number;
}

/** What lies just beyond a visible stretch of a contour, on the side where its own face ends. */
export function background(edge: FeatureEdge, stretch: Interval, grid: CoverGrid): Backed[] {
  const [p, q] = [edge.from, edge.to];
  const [x, y] = [q[0] - p[0], q[1] - p[1]];
  const step = BESIDE / Math.hypot(x, y);
  const at = (t: number): Vec3 => [p[0] + x * t + y * step, p[1] + y * t - x * step, p[2] + (q[2] - p[2]) * t];
  const a = at(stretch[0]);
  const b = at(stretch[1]);
  const seen: { cover: Cover; from: number; to: number }[] = [];
  grid(a, b, (cover) => {
    const over = overlap(cover, a, b);
    if (over) seen.push({ cover, from: over[0], to: over[1] });
    return undefined;
  });
  const stops = [...new Set([0, 1, ...seen.flatMap((s) => [s.from, s.to])])].sort((s, t) => s - t);
  const found: { from: number; to: number; solid: number }[] = [];
  for (let i = 0; i + 1 < stops.length; i++) {
    const [from, to] = [stops[i]!, stops[i + 1]!];
    const middle = (from + to) / 2;
    const [u, v] = [a[0] + (b[0] - a[0]) * middle, a[1] + (b[1] - a[1]) * middle];
    let nearest = -Infinity;
    let solid = -1;
    for (const s of seen) {
      if (s.from > middle || s.to < middle) continue;
      const depth = depthAt(s.cover, u, v);
      if (depth > nearest) [nearest, solid] = [depth, s.cover.solid];
    }
    const last = found[found.length - 1];
    if (last?.solid === solid) last.to = to;
    else found.push({ from, to, solid });
  }
  const whole = stretch[1] - stretch[0];
  return found.map((f) => ({ stretch: [stretch[0] + f.from * whole, stretch[0] + f.to * whole], solid: f.solid }));
}
