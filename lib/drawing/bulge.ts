import { type Deg, degrees, radians } from '../units/mm.ts';
import type { Poly, Pt } from './entity.ts';
import { along, angleOf, distance, left, middle, sub } from './vec.ts';

/** One side of a polyline. */
export interface Side {
  readonly from: Pt;
  readonly to: Pt;
  /** 0 when straight. */
  readonly bulge: number;
}

/** An arc with a sense: `span` is positive counter-clockwise. */
export interface Sweep {
  readonly center: Pt;
  readonly radius: number;
  readonly start: Deg;
  readonly span: Deg;
}

/** The bulge of an arc that turns by `span`, positive counter-clockwise. */
export const bulgeOf = (span: Deg): number => Math.tan(radians(span) / 4);

/** The sides of a polyline in order, the closing one included. */
export function sides(poly: Poly): readonly Side[] {
  const { points, closed } = poly;
  return points.flatMap((point, i) => {
    const next = points[i + 1] ?? (closed ? points[0] : undefined);
    if (!next) return [];
    return [{ from: [point[0], point[1]], to: [next[0], next[1]], bulge: point[2] ?? 0 }];
  });
}

/** The arc that a curved side runs along. */
export function sweep(side: Side): Sweep {
  const { from, to, bulge } = side;
  const chord = distance(from, to);
  if (!(chord > 0) || bulge === 0) throw new RangeError(`no arc has bulge ${bulge} over a chord of ${chord} mm`);
  const toLeft = left([(to[0] - from[0]) / chord, (to[1] - from[1]) / chord]);
  const center = along(middle(from, to), toLeft, (chord * (1 - bulge * bulge)) / (4 * bulge));
  return {
    center,
    radius: (chord * (1 + bulge * bulge)) / (4 * Math.abs(bulge)),
    start: angleOf(sub(from, center)),
    span: 4 * degrees(Math.atan(bulge)),
  };
}
