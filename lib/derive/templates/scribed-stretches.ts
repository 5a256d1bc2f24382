import type { Outline, OutlinePoint } from '../../geometry/outline.ts';
import type { Vec2 } from '../../geometry/vec.ts';

/** A stretch of the outline that lies on the underside. */
export interface ScribedStretch {
  readonly a: OutlinePoint;
  readonly b: OutlinePoint;
}

/** A rise of less than this over the stretch is level, mm. */
const LEVEL = 1e-6;

export const isSloped = ({ a, b }: ScribedStretch): boolean => Math.abs(a.y - b.y) > LEVEL;

/** Rise over run of a stretch. */
export const riseOf = ({ a, b }: ScribedStretch): number => (b.y - a.y) / (b.x - a.x);

/** The stretches that follow the underside, in the order of the walk. */
export function scribedStretches(outline: Outline): ScribedStretch[] {
  return outline.flatMap((a, i) => {
    const b = outline[(i + 1) % outline.length]!;
    return a.surface?.startsWith('underside') ? [{ a, b }] : [];
  });
}

export function areParallel(first: ScribedStretch, second: ScribedStretch): boolean {
  const [u, v] = [run(first), run(second)];
  return Math.abs(u[0] * v[1] - u[1] * v[0]) < LEVEL * Math.hypot(...u) * Math.hypot(...v);
}

const run = ({ a, b }: ScribedStretch): Vec2 => [b.x - a.x, b.y - a.y];

/** The two ends of the scribed edge and the sharp corners in between, where two slopes would meet without a relief. */
export function scribedCorners(outline: Outline): Vec2[] {
  const stretches = scribedStretches(outline);
  const [first, last] = [stretches[0], stretches[stretches.length - 1]];
  if (!first || !last) return [];
  const between = stretches.slice(1).flatMap((next, i): Vec2[] => {
    const before = stretches[i]!;
    if (areParallel(before, next)) return [];
    const [u, v] = [run(before), run(next)];
    const t = ((next.a.x - before.a.x) * v[1] - (next.a.y - before.a.y) * v[0]) / (u[0] * v[1] - u[1] * v[0]);
    return [[before.a.x + u[0] * t, before.a.y + u[1] * t]];
  });
  return [[first.a.x, first.a.y], ...between, [last.b.x, last.b.y]];
}
