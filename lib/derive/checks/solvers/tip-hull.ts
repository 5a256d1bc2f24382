import { hullOf } from '../../../geometry/hull.ts';
import type { Vec2 } from '../../../geometry/vec.ts';
import type { Mm } from '../../../units/mm.ts';

/** A line over which a piece can tip, between two of its contacts with the floor. */
export interface TipLine {
  readonly from: Vec2;
  readonly to: Vec2;
  /** Unit direction, square to the line, away from the contacts. */
  readonly outward: Vec2;
}

/**
 * The lines of the convex hull of contacts, mm in the plan; contacts that lie in one line give it twice, once for either
 * side.
 *
 * @throws RangeError when there are fewer than two different contacts.
 */
export function tipLines(contacts: readonly Vec2[]): TipLine[] {
  const corners = hullOf(contacts);
  if (corners.length < 2) throw new RangeError(`${contacts.length} contacts in one spot are nothing to stand on`);
  return corners.map((from, i) => {
    const to = corners[(i + 1) % corners.length]!;
    const size = Math.hypot(to[0] - from[0], to[1] - from[1]);
    return { from, to, outward: [(to[1] - from[1]) / size, (from[0] - to[0]) / size] };
  });
}

/** mm by which a point lies inside a tipping line; negative outside. */
export const insideOf = ({ from, outward }: TipLine, p: Vec2): Mm =>
  (from[0] - p[0]) * outward[0] + (from[1] - p[1]) * outward[1];
