import { degrees, radians } from '../units/mm.ts';
import { type Box, boundsOf, spanOf } from './bounds.ts';
import { bulgeOf, type Side, sides, sweep } from './bulge.ts';
import type { Arc, Circle, Mark, Poly, Pt, Vertex } from './entity.ts';
import type { Layer } from './layer.ts';
import { along, distance, polar } from './vec.ts';

/** Ends nearer than this are one, mm. */
const SAME = 1e-9;

const holds = ({ min, max }: Box, [x, y]: Pt): boolean => x >= min[0] && x <= max[0] && y >= min[1] && y <= max[1];

/** Whether all of a mark lies in a box; lettering with the room it takes. */
export function isWithin(mark: Mark, box: Box): boolean {
  const own = boundsOf([mark], 1);
  return own === undefined || (holds(box, own.min) && holds(box, own.max));
}

/** The part of a straight side inside a box, after Liang and Barsky. */
function clipLine({ from, to }: Side, { min, max }: Box): Side[] {
  let [t0, t1] = [0, 1];
  for (const axis of [0, 1] as const) {
    const run = to[axis] - from[axis];
    if (run === 0) {
      if (from[axis] < min[axis] || from[axis] > max[axis]) return [];
      continue;
    }
    const ends = [(min[axis] - from[axis]) / run, (max[axis] - from[axis]) / run];
    t0 = Math.max(t0, Math.min(...ends));
    t1 = Math.min(t1, Math.max(...ends));
  }
  if (t1 - t0 <= SAME) return [];
  const at = (t: number): Pt => [from[0] + (to[0] - from[0]) * t, from[1] + (to[1] - from[1]) * t];
  return [{ from: t0 === 0 ? from : at(t0), to: t1 === 1 ? to : at(t1), bulge: 0 }];
}

/** The parts of a curved side inside a box. */
function clipArc(side: Side, box: Box): Side[] {
  const { center, radius, start, span } = sweep(side);
  const share = (angle: number): number => {
    const turn = span > 0 ? angle - start : start - angle;
    return (((turn % 360) + 360) % 360) / Math.abs(span);
  };
  const crossings = ([0, 1] as const).flatMap((axis) =>
    [box.min[axis], box.max[axis]].flatMap((border) => {
      const cos = (border - center[axis]) / radius;
      if (Math.abs(cos) >= 1) return [];
      const half = degrees(Math.acos(cos));
      return axis === 0 ? [half, -half] : [90 - half, 90 + half];
    }),
  );
  const stops = [0, ...crossings.map(share).filter((t) => t > SAME && t < 1 - SAME), 1].sort((a, b) => a - b);
  const at = (t: number): Pt =>
    t === 0 ? side.from : t === 1 ? side.to : along(center, polar(start + span * t), radius);
  return stops.slice(1).flatMap((t1, i): Side[] => {
    const t0 = stops[i]!;
    const middle = along(center, polar(start + (span * (t0 + t1)) / 2), radius);
    return t1 - t0 > SAME && holds(box, middle) ? [{ from: at(t0), to: at(t1), bulge: bulgeOf(span * (t1 - t0)) }] : [];
  });
}

/** Sides in a row as polylines, a new one wherever they do not go on. */
function joined(layer: Layer, parts: readonly Side[]): Poly[] {
  const runs: Side[][] = [];
  for (const side of parts) {
    const run = runs.at(-1);
    if (run && distance(run.at(-1)!.to, side.from) < SAME) run.push(side);
    else runs.push([side]);
  }
  return runs.map((run): Poly => {
    const points = run.map(({ from, bulge }): Vertex => (bulge === 0 ? from : [...from, bulge]));
    return { kind: 'poly', layer, points: [...points, run.at(-1)!.to], closed: false };
  });
}

/** A curve as sides of half a turn at most. */
function arcSides(center: Pt, radius: number, start: number, span: number): Side[] {
  const count = Math.ceil(span / 180);
  const at = (k: number): Pt => along(center, polar(start + (span * k) / count), radius);
  const bulge = Math.tan(radians(span / count) / 4);
  return Array.from({ length: count }, (_, k) => ({ from: at(k), to: at(k + 1), bulge }));
}

const clipSides = (layer: Layer, parts: readonly Side[], box: Box): Poly[] =>
  joined(
    layer,
    parts.flatMap((side) => (side.bulge === 0 ? clipLine(side, box) : clipArc(side, box))),
  );

type Clip<K extends Mark['kind']> = (mark: Extract<Mark, { kind: K }>, box: Box) => readonly Mark[];

const CLIPS: { readonly [K in Mark['kind']]: Clip<K> } = {
  poly: (poly, box) => clipSides(poly.layer, sides(poly), box),
  arc: (arc: Arc, box) => clipSides(arc.layer, arcSides(arc.center, arc.radius, arc.start, spanOf(arc)), box),
  circle: ({ layer, center, radius }: Circle, box) => clipSides(layer, arcSides(center, radius, 0, 360), box),
  solid: () => [],
  text: () => [],
};

/**
 * What a window shows of some marks, at full size: lines and curves as far as they lie in it, exactly; lettering and arrowheads
 * only whole. A dashed line begins anew at the border.
 */
export const clipMarks = (marks: readonly Mark[], box: Box): readonly Mark[] =>
  marks.flatMap((mark) =>
    isWithin(mark, box) ? [mark] : (CLIPS[mark.kind] as (mark: Mark, box: Box) => readonly Mark[])(mark, box),
  );
