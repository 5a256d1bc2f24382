import type { Site } from '../../shop/site.ts';
import type { Mm } from '../../units/mm.ts';
import { type Hindrance, takesPlace } from './seat-hindrance.ts';
import { freeSpans, type Span, spanLength } from './span.ts';
import type { TableEdge } from './table-edge.ts';

/** A stretch of an edge with nothing in the way of legs. */
export interface SeatStretch {
  /** mm from the start of the edge. */
  readonly span: Span;
  /** mm, its length. */
  readonly clear: Mm;
  /** It ends at a corner of the top, beyond the frames. */
  readonly outside: boolean;
  readonly count: number;
  /** mm of each place; 0 when there is none. */
  readonly width: Mm;
}

/** A place that is short by less than this is there, mm. */
const SAME: Mm = 1e-6;

/** The stretches of an edge between what stands there, with the places that fit into each at their least width. */
export function seatStretches(
  edge: TableEdge,
  pieces: readonly Hindrance[],
  seating: Site['seating'],
  range: Span = [0, edge.length],
): SeatStretch[] {
  const taken = pieces.filter((p) => takesPlace(p, seating)).map((p) => p.seen.along);
  return freeSpans(range, taken).map((span) => {
    const clear = spanLength(span);
    const count = Math.floor((clear + SAME) / seating.least);
    const outside = taken.length > 0 && (span[0] <= range[0] || span[1] >= range[1]);
    return { span, clear, outside, count, width: count > 0 ? clear / count : 0 };
  });
}

export const placesIn = (stretches: readonly SeatStretch[]): number => stretches.reduce((sum, s) => sum + s.count, 0);
