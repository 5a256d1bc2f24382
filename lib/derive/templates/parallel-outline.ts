import { arcOfBulge, type Outline, type OutlinePoint } from '../../geometry/outline.ts';

/** Directions that differ by less than this run on into one another: a line into its round. */
const TANGENT = 1e-9;

/** A side of the outline, moved outwards: a point and direction of a line, or center and radius of an arc. */
type Moved =
  | { readonly kind: 'line'; readonly x: number; readonly y: number; readonly ux: number; readonly uy: number }
  | { readonly kind: 'arc'; readonly cx: number; readonly cy: number; readonly radius: number };

interface Side {
  readonly a: OutlinePoint;
  readonly b: OutlinePoint;
  readonly moved: Moved;
  /** Direction of the walk at the start and at the end. */
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
}

function sideOf(a: OutlinePoint, b: OutlinePoint, distance: number): Side {
  if (!a.bulge) {
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    const [ux, uy] = [(b.x - a.x) / length, (b.y - a.y) / length];
    const moved: Moved = { kind: 'line', x: a.x + uy * distance, y: a.y - ux * distance, ux, uy };
    return { a, b, moved, from: [ux, uy], to: [ux, uy] };
  }
  const { cx, cy, radius, start, span } = arcOfBulge(a, b);
  const turn = Math.sign(span);
  const ahead = (at: number): [number, number] => [-Math.sin(at) * turn, Math.cos(at) * turn];
  const moved: Moved = { kind: 'arc', cx, cy, radius: radius + turn * distance };
  return { a, b, moved, from: ahead(start), to: ahead(start + span) };
}

/** Where two sides meet after they were moved; nothing where an arc meets another side at a corner. */
function corner(before: Side, after: Side, distance: number): readonly [number, number] | undefined {
  const [ux, uy] = before.to;
  const [vx, vy] = after.from;
  const turn = ux * vy - uy * vx;
  const { x, y } = after.a;
  if (Math.abs(turn) < TANGENT && ux * vx + uy * vy > 0) return [x + uy * distance, y - ux * distance];
  if (before.moved.kind === 'arc' || after.moved.kind === 'arc' || Math.abs(turn) < TANGENT) return undefined;
  const t = ((after.moved.x - before.moved.x) * vy - (after.moved.y - before.moved.y) * vx) / turn;
  return [before.moved.x + ux * t, before.moved.y + uy * t];
}

/** Whether a side still runs the way it did: one that was shorter than what its neighbors take from it is turned about. */
const runsOn = ({ moved, from: [ux, uy] }: Side, p: OutlinePoint, q: OutlinePoint): boolean =>
  moved.kind === 'arc' ? moved.radius > 0 : (q.x - p.x) * ux + (q.y - p.y) * uy > 0;

/**
 * The outline `distance` mm outside another, counter-clockwise, with pointed corners: every side moved square to itself.
 * Nothing when a side would vanish or an arc ends in a corner: that takes more than moving sides.
 */
export function parallelOutline(outline: Outline, distance: number): OutlinePoint[] | undefined {
  const sides = outline.map((a, i) => sideOf(a, outline[(i + 1) % outline.length]!, distance));
  const corners = sides.map((side, i) => corner(sides[(i + sides.length - 1) % sides.length]!, side, distance));
  const points: OutlinePoint[] = [];
  for (const [i, at] of corners.entries()) {
    if (!at) return undefined;
    const { bulge } = outline[i]!;
    points.push({ x: at[0], y: at[1], ...(bulge ? { bulge } : {}) });
  }
  const whole = sides.every((side, i) => runsOn(side, points[i]!, points[(i + 1) % points.length]!));
  return whole ? points : undefined;
}
