import type { Drawing } from './drawing.ts';
import type { Mark, Pt, Vertex } from './entity.ts';
import { flatten } from './flatten.ts';

type Move = (point: Pt) => Pt;
type MoveMark<K extends Mark['kind']> = (mark: Extract<Mark, { kind: K }>, move: Move, factor: number) => Mark;

const MOVES: { readonly [K in Mark['kind']]: MoveMark<K> } = {
  poly: (poly, move) => ({
    ...poly,
    points: poly.points.map(([x, y, bulge]): Vertex => (bulge === undefined ? move([x, y]) : [...move([x, y]), bulge])),
  }),
  arc: (arc, move, factor) => ({ ...arc, center: move(arc.center), radius: arc.radius * factor }),
  circle: (circle, move, factor) => ({ ...circle, center: move(circle.center), radius: circle.radius * factor }),
  solid: (solid, move) => {
    const [a, b, c, d] = solid.corners;
    return { ...solid, corners: d ? [move(a), move(b), move(c), move(d)] : [move(a), move(b), move(c)] };
  },
  text: (text, move) => ({ ...text, at: move(text.at) }),
};

/** A mark with its points moved and its radii times a factor. Lettering keeps its height. */
export const moveMark = (mark: Mark, to: (point: Pt) => Pt, factor = 1): Mark =>
  (MOVES[mark.kind] as (mark: Mark, move: Move, factor: number) => Mark)(mark, to, factor);

/**
 * The marks of a view on a sheet, in paper mm: drawn at the view's scale, with the view's origin at `origin` of the
 * sheet. Lettering keeps its height, since that was in paper mm all along; dimensions keep the text of the true value.
 */
export function place(drawing: Drawing, origin: Pt): readonly Mark[] {
  const factor = 1 / drawing.style.scale;
  const move: Move = ([x, y]) => [origin[0] + x * factor, origin[1] + y * factor];
  return flatten(drawing).map((mark) => moveMark(mark, move, factor));
}
