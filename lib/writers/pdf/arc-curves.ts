import type { Pt } from '../../drawing/entity.ts';
import { along, left, polar } from '../../drawing/vec.ts';
import { type Deg, radians } from '../../units/mm.ts';

/** No curve turns further than this: one of 90 degrees is 0.08 mm off an arc of 300 mm, one of 30 degrees 0.0001 mm (measured). */
const TURN = 30;

/** One curve of a row that follows an arc: it starts where the last one ended. */
export interface Curve {
  readonly first: Pt;
  readonly second: Pt;
  readonly to: Pt;
}

/** Curves along an arc from `start` on; `span` is positive counter-clockwise. */
export function arcCurves(center: Pt, radius: number, start: Deg, span: Deg): readonly Curve[] {
  const count = Math.max(1, Math.ceil(Math.abs(span) / TURN - 1e-9));
  const turn = span / count;
  // The length of the handles for which the middle of the curve lies on the arc.
  const handle = (4 / 3) * Math.tan(radians(turn) / 4) * radius;
  return Array.from({ length: count }, (_, k): Curve => {
    const [from, to] = [polar(start + k * turn), polar(start + (k + 1) * turn)];
    const end = along(center, to, radius);
    return {
      first: along(along(center, from, radius), left(from), handle),
      second: along(end, left(to), -handle),
      to: end,
    };
  });
}
