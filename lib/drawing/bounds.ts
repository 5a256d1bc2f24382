import type { Deg } from '../units/mm.ts';
import { sides, sweep } from './bulge.ts';
import type { Drawing } from './drawing.ts';
import type { Arc, Circle, Mark, Poly, Pt, Solid, Text } from './entity.ts';
import { flatten } from './flatten.ts';
import { textCorners } from './text-size.ts';
import { along, polar } from './vec.ts';

/** The least upright rectangle around something, in model mm. */
export interface Box {
  readonly min: Pt;
  readonly max: Pt;
}

/** Span of an arc counter-clockwise, over 0 up to 360. */
export const spanOf = (arc: Arc): Deg => 360 - ((((arc.start - arc.end) % 360) + 360) % 360);

/** The ends of an arc and the quarter points that it passes. */
function reach(center: Pt, radius: number, start: Deg, span: Deg): readonly Pt[] {
  const low = Math.min(start, start + span);
  const high = Math.max(start, start + span);
  const quarters: Deg[] = [];
  for (let quarter = Math.ceil(low / 90) * 90; quarter <= high; quarter += 90) quarters.push(quarter);
  return [low, high, ...quarters].map((angle) => along(center, polar(angle), radius));
}

const polyPoints = (poly: Poly): readonly Pt[] => [
  ...poly.points.map(([x, y]): Pt => [x, y]),
  ...sides(poly)
    .filter((side) => side.bulge !== 0)
    .flatMap((side) => {
      const { center, radius, start, span } = sweep(side);
      return reach(center, radius, start, span);
    }),
];

const POINTS: { readonly [K in Mark['kind']]: (mark: Extract<Mark, { kind: K }>, scale: number) => readonly Pt[] } = {
  poly: polyPoints,
  arc: (arc: Arc) => reach(arc.center, arc.radius, arc.start, spanOf(arc)),
  circle: (circle: Circle) => reach(circle.center, circle.radius, 0, 360),
  solid: (solid: Solid) => solid.corners,
  text: (text: Text, scale: number) => textCorners(text, scale),
};

/** The box around marks at a scale, or nothing when there are none. Arcs are exact, line widths not counted. */
export function boundsOf(marks: readonly Mark[], scale: number): Box | undefined {
  const points = marks.flatMap((mark) =>
    (POINTS[mark.kind] as (mark: Mark, scale: number) => readonly Pt[])(mark, scale),
  );
  if (points.length === 0) return undefined;
  let [left, low] = [Infinity, Infinity];
  let [right, high] = [-Infinity, -Infinity];
  for (const [x, y] of points) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    low = Math.min(low, y);
    high = Math.max(high, y);
  }
  return { min: [left, low], max: [right, high] };
}

/** The box around a drawing with its dimensions. The width of lettering is approximate: see `CHAR_WIDTH`. */
export const bounds = (drawing: Drawing): Box | undefined => boundsOf(flatten(drawing), drawing.style.scale);
