import type { PartId } from '../../model/part.ts';
import type { Mm } from '../../units/mm.ts';
import { KNEE_LINE, kneeLineDepth, WHEELCHAIR_BOX } from './access-lines.ts';
import { lowestOver, type RoomUnder } from './room-under.ts';
import { type Hindrance, liesAlong } from './seat-hindrance.ts';
import { nearest } from './seat-place.ts';
import { freeSpans, middleOf, type Span, spanLength } from './span.ts';
import type { TableEdge } from './table-edge.ts';

/** Room for a wheelchair at one edge, held against the two published lines. */
export interface WheelchairRoom {
  readonly edge: TableEdge;
  /** mm: the longest stretch without anything in a place as deep and high as the box. */
  readonly clear: Mm;
  /** mm over the floor under the top, as deep in as the box, in the middle of that stretch; of the edge if it is too short. */
  readonly kneeHeight: Mm;
  /** mm in from the edge to the first piece there, and which it is; to the opposite edge when there is none. */
  readonly depth: Mm;
  readonly meets?: PartId;
  /** 27 in high, 30 in wide and 19 in deep are free. */
  readonly box: boolean;
  /** The knee and toe line of 306 is free over 30 in. */
  readonly line: boolean;
}

/** Rounding, mm. */
const SAME: Mm = 1e-6;

export function wheelchairRoom(edge: TableEdge, pieces: readonly Hindrance[], room: RoomUnder): WheelchairRoom {
  const { height, width, depth } = WHEELCHAIR_BOX.value;
  const inBox = pieces.filter(({ seen }) => seen.deep[0] < depth - SAME && seen.deep[1] > SAME && seen.up[0] < height);
  const stretch = longestFree(edge, inBox);
  const clear = stretch ? spanLength(stretch) : 0;
  const span = windowIn(stretch && clear >= width - SAME ? stretch : [0, edge.length], width);
  const met = nearest(pieces.filter((p) => liesAlong(p, span) && p.seen.up[0] < height && p.seen.deep[1] > SAME));
  const kneeHeight = under(edge, room, span, Math.min(depth, edge.across));
  return {
    edge,
    clear,
    kneeHeight,
    depth: met?.deep ?? edge.across,
    ...(met ? { meets: met.part } : {}),
    box: clear >= width - SAME && edge.across >= depth - SAME && kneeHeight >= height - SAME,
    line: onLine(edge, pieces, room),
  };
}

function onLine(edge: TableEdge, pieces: readonly Hindrance[], room: RoomUnder): boolean {
  const { knees, high, toeDepth, width } = KNEE_LINE.value;
  const stretch = longestFree(edge, pieces.filter(crossesLine));
  if (!stretch || spanLength(stretch) < width - SAME || edge.across < toeDepth - SAME) return false;
  return under(edge, room, windowIn(stretch, width), high) >= knees - SAME;
}

/** A piece stands where 306 wants room: nearer to the edge than the line is deep at its lower end. */
function crossesLine({ seen }: Hindrance): boolean {
  const { toes, knees } = KNEE_LINE.value;
  const [low, high] = seen.up;
  if (low > knees - SAME || seen.deep[1] < SAME) return false;
  const reach = Math.max(low < toes ? kneeLineDepth(low) : 0, high > toes ? kneeLineDepth(Math.max(low, toes)) : 0);
  return seen.deep[0] < reach - SAME;
}

function longestFree(edge: TableEdge, pieces: readonly Hindrance[]): Span | undefined {
  const spans = freeSpans(
    [0, edge.length],
    pieces.map((p) => p.seen.along),
  );
  return spans.reduce<Span | undefined>((a, b) => (a && spanLength(a) >= spanLength(b) ? a : b), undefined);
}

/** A window of that width in the middle of a stretch, no wider than it. */
function windowIn(span: Span, width: Mm): Span {
  const half = Math.min(width, spanLength(span)) / 2;
  const middle = middleOf(span);
  return [middle - half, middle + half];
}

const under = (edge: TableEdge, { underside }: RoomUnder, [from, to]: Span, depth: Mm): Mm =>
  lowestOver(underside, [edge.at(from, 0), edge.at(to, 0), edge.at(to, depth), edge.at(from, depth)]);
