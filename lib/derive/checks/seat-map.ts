import type { Mm } from '../../units/mm.ts';
import type { CheckContext } from './check.ts';
import { type RoomUnder, roomUnder } from './room-under.ts';
import { type Hindrance, hindrancesAt } from './seat-hindrance.ts';
import { type SeatPlace, seatPlace } from './seat-place.ts';
import { placesIn, type SeatStretch, seatStretches } from './seat-stretch.ts';
import type { Span } from './span.ts';
import { type TableEdge, tableEdges } from './table-edge.ts';

/** One edge with the places at it. */
export interface SeatEdge {
  readonly edge: TableEdge;
  readonly pieces: readonly Hindrance[];
  /** None at an edge that is not used. */
  readonly stretches: readonly SeatStretch[];
  readonly places: readonly SeatPlace[];
}

/** Who can sit where. */
export interface SeatMap {
  readonly room: RoomUnder;
  /** Left side, right side, reference end, far end. */
  readonly edges: readonly [SeatEdge, SeatEdge, SeatEdge, SeatEdge];
  readonly places: readonly SeatPlace[];
  /** Too narrow for knees from both sides: only the left one is used. */
  readonly oneSided: boolean;
}

/** Which of the two ends have places. */
type Ends = readonly [boolean, boolean];

const CHOICES: readonly Ends[] = [
  [true, true],
  [true, false],
  [false, true],
  [false, false],
];

/** A place at a length of exactly two knee places counts, mm. */
const SAME: Mm = 1e-6;

/**
 * The places between the frames and outside them, summed over the free stretches of each edge and never over the
 * perimeter. A corner is given once: a place at an end takes the depth of its knees off both sides, or there is no place
 * at that end; whichever seats more. Undefined for a piece without a top.
 */
export function seatMap({ assembly, site }: Pick<CheckContext, 'assembly' | 'site'>): SeatMap | undefined {
  const room = roomUnder(assembly);
  if (!room) return undefined;
  const { seating } = site;
  const edges = tableEdges(room.box).map((edge) => ({ edge, pieces: hindrancesAt(edge, room, seating) }));
  const oneSided = edges[0]!.edge.across < 2 * seating.knee - SAME;
  const layouts = CHOICES.filter((ends) => seating.ends || !ends.some(Boolean))
    .map((ends) => ({
      ends,
      stretches: edges.map(({ edge, pieces }, k) => {
        const used = edge.kind === 'end' ? ends[k - 2]! : !(oneSided && k === 1);
        return used ? seatStretches(edge, pieces, seating, rangeOf(edge, ends, seating.knee)) : [];
      }),
    }))
    // An end where nobody can sit must not take the corners off the sides.
    .filter(({ ends, stretches }) => ends.every((used, k) => !used || placesIn(stretches[k + 2]!) > 0))
    .map(({ stretches }) => stretches);
  // The first of the best: with as many places, those at the ends.
  const best = layouts.reduce((a, b) => (total(b) > total(a) ? b : a));
  const filled = edges.map(({ edge, pieces }, k): SeatEdge => {
    const stretches = best[k]!;
    const places = stretches.flatMap((s) =>
      Array.from({ length: s.count }, (_, n) => seatPlace(edge, pieces, room, seating, s, n)),
    );
    return { edge, pieces, stretches, places };
  });
  return {
    room,
    edges: filled as unknown as SeatMap['edges'],
    places: filled.flatMap((e) => e.places),
    oneSided,
  };
}

const total = (layout: readonly (readonly SeatStretch[])[]): number =>
  layout.reduce((sum, stretches) => sum + placesIn(stretches), 0);

/** A side without its corners where somebody sits at the end. */
function rangeOf({ kind, length }: TableEdge, [atStart, atEnd]: Ends, knee: Mm): Span {
  if (kind === 'end') return [0, length];
  return [atStart ? knee : 0, length - (atEnd ? knee : 0)];
}
