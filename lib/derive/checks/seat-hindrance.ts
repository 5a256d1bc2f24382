import type { Part } from '../../model/part.ts';
import type { Site } from '../../shop/site.ts';
import type { Mm } from '../../units/mm.ts';
import type { RoomUnder } from './room-under.ts';
import { overlap, type Span, spanLength } from './span.ts';
import type { SeenBox, TableEdge } from './table-edge.ts';

/** What a piece under a table gets in the way of. */
export type Hinders = 'feet' | 'legs' | 'thighs';

/** A piece of the base as one meets it who sits at an edge. */
export interface Hindrance {
  readonly part: Part;
  readonly seen: SeenBox;
  readonly hinders: Hinders;
}

/**
 * Pieces that end lower than this only meet feet: 9 in, the height of toe clearance in 306.2 of the 2010 ADA Standards
 * (read in a reference copy). That it also parts feet from legs at an ordinary seat is our convention.
 */
export const TOES: Mm = 228.6;

/** Less than this is rounding, mm. */
const SAME: Mm = 1e-6;

/** All pieces of the base as an edge sees them. */
export const hindrancesAt = (edge: TableEdge, room: RoomUnder, { seatHeight }: Site['seating']): Hindrance[] =>
  room.obstacles.map(({ part, box }) => {
    const seen = edge.seen(box);
    return { part, seen, hinders: hinders(seen.up, seatHeight) };
  });

function hinders([low, high]: Span, seatHeight: Mm): Hinders {
  if (high <= TOES + SAME) return 'feet';
  return low > seatHeight ? 'thighs' : 'legs';
}

/** A piece stands within so much of the edge. */
export const standsWithin = ({ seen }: Hindrance, depth: Mm): boolean => overlap(seen.deep, [0, depth]) > SAME;

/** A piece lies along some of a stretch of the edge. */
export const liesAlong = ({ seen }: Hindrance, span: Span): boolean => overlap(seen.along, span) > SAME;

/**
 * Nobody sits where this piece stands: legs would have to be where it is, or it hangs too low over a place that could as
 * well be beside it. What hangs low all along an edge takes no place away; it shows in the knee height.
 */
export function takesPlace(piece: Hindrance, { knee, least, seatHeight, thigh }: Site['seating']): boolean {
  if (!standsWithin(piece, knee)) return false;
  if (piece.hinders !== 'thighs') return piece.hinders === 'legs';
  return piece.seen.up[0] < seatHeight + thigh - SAME && spanLength(piece.seen.along) < least;
}
