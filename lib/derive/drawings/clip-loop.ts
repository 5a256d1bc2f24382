import type { Vec2 } from '../../geometry/vec.ts';
import type { Mm } from '../../units/mm.ts';

/** The part of a closed border that lies right of an upright line; empty when nothing does. Borders that come back over the line run along it. */
export function clipLoop(loop: readonly Vec2[], least: Mm): Vec2[] {
  const kept: Vec2[] = [];
  loop.forEach((p, k) => {
    const q = loop[(k + 1) % loop.length]!;
    if (p[0] >= least) kept.push(p);
    if (p[0] >= least !== q[0] >= least) {
      const t = (least - p[0]) / (q[0] - p[0]);
      kept.push([least, p[1] + (q[1] - p[1]) * t]);
    }
  });
  return kept;
}
