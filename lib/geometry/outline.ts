/**
 * A closed outline of lines and arcs, counter-clockwise, without crossing itself.
 *
 * Each point starts a segment to the next one. `bulge` is tan(span / 4) of the arc that replaces the straight segment:
 * 0 for a line, positive when the arc turns counter-clockwise (bulges to the right of the walk).
 */
export interface OutlinePoint {
  /** mm, in the plane of the outline. */
  readonly x: number;
  readonly y: number;
  readonly bulge?: number;
  /** Name of the surface that the segment becomes on a solid: "v.left", "end". */
  readonly surface?: string;
}

export type Outline = readonly OutlinePoint[];

export interface ArcOfBulge {
  readonly cx: number;
  readonly cy: number;
  readonly radius: number;
  /** Radians; the arc runs from `start` by `span`, which carries the sign of the bulge. */
  readonly start: number;
  readonly span: number;
}

/** Centre, radius and span of the arc from `a` to `b`. */
export function arcOfBulge(a: OutlinePoint, b: OutlinePoint): ArcOfBulge {
  const bulge = a.bulge ?? 0;
  const half = (1 - bulge * bulge) / (4 * bulge);
  const cx = (a.x + b.x) / 2 - (b.y - a.y) * half;
  const cy = (a.y + b.y) / 2 + (b.x - a.x) * half;
  return {
    cx,
    cy,
    radius: Math.hypot(a.x - cx, a.y - cy),
    start: Math.atan2(a.y - cy, a.x - cx),
    span: 4 * Math.atan(bulge),
  };
}

/** Area in mm², arcs exact; positive for a counter-clockwise outline. */
export function outlineArea(outline: Outline): number {
  let twice = 0;
  outline.forEach((a, i) => {
    const b = outline[(i + 1) % outline.length]!;
    twice += a.x * b.y - b.x * a.y;
    if (a.bulge) {
      const { radius, span } = arcOfBulge(a, b);
      twice += radius * radius * (span - Math.sin(span));
    }
  });
  return twice / 2;
}

/** Chords stay this close to a true arc, mm, however flat it is. */
const CHORD_ERROR = 0.1;

/** The outline with every arc as a row of chords, none spanning more than `maxDegrees`; the points lie on the arc. */
export function facetOutline(outline: Outline, maxDegrees = 7.5): OutlinePoint[] {
  const points: OutlinePoint[] = [];
  outline.forEach((a, i) => {
    const { bulge, ...start } = a;
    points.push(start);
    if (!bulge) return;
    const arc = arcOfBulge(a, outline[(i + 1) % outline.length]!);
    const widest = Math.min((maxDegrees * Math.PI) / 180, 2 * Math.acos(Math.max(0, 1 - CHORD_ERROR / arc.radius)));
    const byAngle = Math.abs(arc.span) / ((maxDegrees * Math.PI) / 180);
    // A small round is coarse enough by its angle; only a flat arc needs more than that.
    const count = Math.max(1, Math.ceil((arc.radius > FLAT ? Math.abs(arc.span) / widest : byAngle) - 1e-9));
    for (let k = 1; k < count; k++) {
      const at = arc.start + (arc.span * k) / count;
      points.push({ ...start, x: arc.cx + arc.radius * Math.cos(at), y: arc.cy + arc.radius * Math.sin(at) });
    }
  });
  return points;
}

/** Arcs wider than this are judged by their chords, mm: below it 7.5 degrees are within 0.11 mm anyway. */
const FLAT = 50;

/**
 * The outline with the straight corner at `index` rounded to `radius`. Refuses a corner that touches an arc, or a radius
 * that does not fit its sides.
 *
 * @throws RangeError naming the radius and the largest that fits.
 */
export function roundCorner(outline: Outline, index: number, radius: number): OutlinePoint[] {
  const n = outline.length;
  const before = outline[(index + n - 1) % n]!;
  const corner = outline[index]!;
  const after = outline[(index + 1) % n]!;
  if (before.bulge || corner.bulge) throw new RangeError(`corner ${index} touches an arc and cannot be rounded`);
  const inLength = Math.hypot(corner.x - before.x, corner.y - before.y);
  const outLength = Math.hypot(after.x - corner.x, after.y - corner.y);
  const u = [(corner.x - before.x) / inLength, (corner.y - before.y) / inLength] as const;
  const v = [(after.x - corner.x) / outLength, (after.y - corner.y) / outLength] as const;
  const turn = Math.atan2(u[0] * v[1] - u[1] * v[0], u[0] * v[0] + u[1] * v[1]);
  const back = radius * Math.tan(Math.abs(turn) / 2);
  const most = Math.min(inLength, outLength) / Math.tan(Math.abs(turn) / 2);
  if (back > Math.min(inLength, outLength) + 1e-9) {
    throw new RangeError(`a radius of ${radius} mm does not fit corner ${index}; at most ${most} mm`);
  }
  const rounded: OutlinePoint[] = [
    { x: corner.x - u[0] * back, y: corner.y - u[1] * back, bulge: Math.tan(turn / 4), surface: `round.${index}` },
    { ...corner, x: corner.x + v[0] * back, y: corner.y + v[1] * back },
  ];
  return [...outline.slice(0, index), ...rounded, ...outline.slice(index + 1)];
}
