import { spanOf } from '../../drawing/bounds.ts';
import { sides, sweep } from '../../drawing/bulge.ts';
import type { Arc, Poly, Pt } from '../../drawing/entity.ts';
import { along, polar } from '../../drawing/vec.ts';

/** Prints a model length in paper mm, and a model point as `x y` with y down. */
export interface Paper {
  readonly length: (mm: number) => string;
  readonly point: (at: Pt) => string;
}

/** An arc command: y points down, so a counter-clockwise arc of the model has sweep flag 0. */
const arcTo = (radius: number, span: number, to: Pt, paper: Paper): string =>
  `A${paper.length(radius)} ${paper.length(radius)} 0 ${Math.abs(span) > 180 ? 1 : 0} ${span > 0 ? 0 : 1} ${paper.point(to)}`;

/** Path data of a polyline; curved sides are true arcs. */
export function polyPath(poly: Poly, paper: Paper): string {
  const [first] = poly.points;
  if (!first || poly.points.length < 2) {
    throw new RangeError(`a polyline on ${poly.layer.name} has ${poly.points.length} points; it needs two`);
  }
  const steps = sides(poly).map((side) => {
    if (side.bulge === 0) return `L${paper.point(side.to)}`;
    const { radius, span } = sweep(side);
    return arcTo(radius, span, side.to, paper);
  });
  return `M${paper.point([first[0], first[1]])}${steps.join('')}${poly.closed ? 'Z' : ''}`;
}

/** Path data of an arc. */
export function arcPath(arc: Arc, paper: Paper): string {
  const at = (angle: number): Pt => along(arc.center, polar(angle), arc.radius);
  const span = spanOf(arc);
  const half = at(arc.start + span / 2); // two pieces: a whole turn has no end of its own
  const pieces = [half, at(arc.start + span)].map((to) => arcTo(arc.radius, span / 2, to, paper));
  return `M${paper.point(at(arc.start))}${pieces.join('')}`;
}
