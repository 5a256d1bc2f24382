import type { Vec2 } from '../../geometry/vec.ts';
import type { Verdict } from '../../model/finding.ts';
import type { PartId } from '../../model/part.ts';
import type { Site } from '../../shop/site.ts';
import type { Mm } from '../../units/mm.ts';
import { atLeastVerdict } from './check.ts';
import { lowestOver, type RoomUnder } from './room-under.ts';
import { type Hindrance, liesAlong, standsWithin } from './seat-hindrance.ts';
import type { SeatStretch } from './seat-stretch.ts';
import { overlap, type Span } from './span.ts';
import type { EdgeName, TableEdge } from './table-edge.ts';

/** Something and how far in from the edge it stands, mm. */
export interface InTheWay {
  readonly part: PartId;
  readonly deep: Mm;
}

/** Where one person sits. */
export interface SeatPlace {
  readonly edge: EdgeName;
  readonly kind: TableEdge['kind'];
  /** Beyond the frames, at a corner. */
  readonly outside: boolean;
  /** Middle of the place on the edge, mm in the table's frame. */
  readonly middle: Vec2;
  /** The same, in from the edge by the depth of a knee place. */
  readonly knees: Vec2;
  /** mm along the edge. */
  readonly width: Mm;
  /** mm over the floor: the least over the whole knee place, and what it is under. */
  readonly kneeHeight: Mm;
  readonly kneeUnder: PartId;
  /** mm over the seat. */
  readonly thighRoom: Mm;
  /** mm in from the edge to the first piece at the height of legs, or to the opposite edge. */
  readonly legDepth: Mm;
  readonly legsMeet?: PartId;
  /** A low piece inside the knee place that feet meet. */
  readonly feetMeet?: InTheWay;
  readonly verdict: Verdict;
}

/** Published thigh room is 6 to 7 in (read in excerpt): a place may have half of that span less than is wanted. */
export const THIGH_SPAN: Mm = 12.7;

/** A low piece is in the way of feet when it runs along this share of a place (our convention). */
const FEET_SHARE = 0.5;

/** The `k`th place of a stretch. */
export function seatPlace(
  edge: TableEdge,
  pieces: readonly Hindrance[],
  room: RoomUnder,
  { knee, seatHeight, thigh }: Site['seating'],
  stretch: SeatStretch,
  k: number,
): SeatPlace {
  const { width } = stretch;
  const span: Span = [stretch.span[0] + k * width, stretch.span[0] + (k + 1) * width];
  const depth = Math.min(knee, edge.across);
  const here = pieces.filter((p) => liesAlong(p, span));
  const above = lowestAbove(edge, here, room, span, depth);
  const legs = nearest(here.filter((p) => p.hinders === 'legs'));
  const feet = nearest(
    here.filter(
      (p) => p.hinders === 'feet' && standsWithin(p, depth) && overlap(p.seen.along, span) >= width * FEET_SHARE,
    ),
  );
  const middle = (span[0] + span[1]) / 2;
  return {
    edge: edge.name,
    kind: edge.kind,
    outside: stretch.outside,
    middle: edge.at(middle, 0),
    knees: edge.at(middle, depth),
    width,
    kneeHeight: above.height,
    kneeUnder: above.part,
    thighRoom: above.height - seatHeight,
    legDepth: legs?.deep ?? edge.across,
    ...(legs ? { legsMeet: legs.part } : {}),
    ...(feet ? { feetMeet: feet } : {}),
    verdict: atLeastVerdict(above.height - seatHeight, thigh, thigh - THIGH_SPAN),
  };
}

/** What hangs lowest over a stretch of an edge, so many mm deep. */
export function lowestAbove(
  edge: TableEdge,
  pieces: readonly Hindrance[],
  { top, underside }: RoomUnder,
  [from, to]: Span,
  depth: Mm,
): { readonly part: PartId; readonly height: Mm } {
  const corners = [edge.at(from, 0), edge.at(to, 0), edge.at(to, depth), edge.at(from, depth)] as const;
  return pieces
    .filter((p) => p.hinders === 'thighs' && standsWithin(p, depth) && liesAlong(p, [from, to]))
    .map((p) => ({ part: p.part.id, height: p.seen.up[0] }))
    .reduce((least, next) => (next.height < least.height ? next : least), {
      part: top.id,
      height: lowestOver(underside, corners),
    });
}

/** The piece that one meets first; of several at one depth the tallest. */
export function nearest(pieces: readonly Hindrance[]): InTheWay | undefined {
  const [first] = pieces
    .map(({ part, seen }) => ({ part: part.id, deep: Math.max(0, seen.deep[0]), tall: seen.up[1] - seen.up[0] }))
    .sort((a, b) => (Math.abs(a.deep - b.deep) > SAME ? a.deep - b.deep : b.tall - a.tall));
  return first && { part: first.part, deep: first.deep };
}

/** Rounding, mm. */
const SAME: Mm = 1e-6;
