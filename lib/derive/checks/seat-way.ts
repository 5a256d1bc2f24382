import { partOf } from '../../model/assembly.ts';
import type { Mm } from '../../units/mm.ts';
import { type CheckContext, called, say } from './check.ts';
import { standsWithin } from './seat-hindrance.ts';
import type { SeatEdge } from './seat-map.ts';
import { type InTheWay, nearest } from './seat-place.ts';
import { spanLength } from './span.ts';

/** The piece at the height of legs that takes most of an edge, among those inside its knee places. */
export function mostInTheWay({ pieces }: SeatEdge, knee: Mm): InTheWay | undefined {
  const inside = pieces.filter((p) => p.hinders === 'legs' && standsWithin(p, knee));
  const longest = Math.max(...inside.map((p) => spanLength(p.seen.along)));
  return nearest(inside.filter((p) => spanLength(p.seen.along) > longest - SAME));
}

/** Rounding, mm. */
const SAME: Mm = 1e-6;

/** Why there is no place at an edge: "8 1/8 in before panel leg L1, and a place takes 12 in". */
export function inTheWay(context: CheckContext, at: SeatEdge): string {
  const { knee, least } = context.site.seating;
  const first = mostInTheWay(at, knee);
  if (first) {
    const part = called(partOf(context.assembly, first.part));
    return `${say(context, first.deep, 'down')} before ${part}, and a place takes ${say(context, knee, 'up')}`;
  }
  return at.edge.length < least
    ? `${say(context, at.edge.length, 'down')} of edge, and a place takes ${say(context, least, 'up')}`
    : 'the corners are used by the sides';
}
