import type { Vec2, Vec3 } from '../../geometry/vec.ts';
import type { PartId } from '../../model/part.ts';
import type { ViewLine } from './view-line.ts';

/** A stretch of one edge, in view coordinates. */
export interface Piece {
  readonly from: Vec3;
  readonly to: Vec3;
  readonly kind: ViewLine['kind'];
  readonly part: PartId;
  readonly outline: boolean;
}

/** A line of the view plane and what lies on it. */
interface Track {
  readonly at: Vec2;
  readonly along: Vec2;
  readonly laid: Laid[];
}

interface Laid {
  readonly piece: Piece;
  /** mm along the track, and the depth there. */
  readonly start: number;
  readonly end: number;
  readonly startDepth: number;
  readonly endDepth: number;
}

/** Ends closer than this to a line lie on it, mm. */
const NEAR = 1e-3;

/** The shortest line that is kept, mm. */
const SHORT = 0.01;

/** The bins by which pieces find their line: sine of its direction, and mm from the origin. */
const TURN = 1e-5;
const OFFSET = 1e-2;

/** Every line of the view once: pieces that lie on each other become one, visible over hidden, near over far. */
export function joinCollinear(pieces: readonly Piece[]): ViewLine[] {
  return tracks(pieces).flatMap(walk);
}

function tracks(pieces: readonly Piece[]): Track[] {
  const found: Track[] = [];
  const bins = new Map<number, Track[]>();
  const sorted = pieces.map((piece) => ({ piece, size: sizeOf(piece) })).sort((a, b) => b.size - a.size);
  for (const { piece, size } of sorted) {
    if (size < SHORT) continue;
    const along = directionOf(piece, size);
    const turn = Math.round(Math.atan2(along[1], along[0]) / TURN);
    const offset = Math.round((along[0] * piece.from[1] - along[1] * piece.from[0]) / OFFSET);
    let track = find(bins, turn, offset, piece);
    if (!track) {
      track = { at: [piece.from[0], piece.from[1]], along, laid: [] };
      found.push(track);
      const bin = bins.get(binOf(turn, offset));
      if (bin) bin.push(track);
      else bins.set(binOf(turn, offset), [track]);
    }
    track.laid.push(lay(track, piece));
  }
  return found;
}

const sizeOf = ({ from, to }: Piece): number => Math.hypot(to[0] - from[0], to[1] - from[1]);

/** To the right; an upright line upward. */
function directionOf({ from, to }: Piece, size: number): Vec2 {
  const [x, y] = [(to[0] - from[0]) / size, (to[1] - from[1]) / size];
  const back = Math.abs(x) < 1e-6 ? y < 0 : x < 0;
  return back ? [-x, -y] : [x, y];
}

const binOf = (turn: number, offset: number): number => turn * 2 ** 24 + offset;

/** The line that a piece lies on, looked for in its bin and the eight around it. */
function find(bins: ReadonlyMap<number, Track[]>, turn: number, offset: number, piece: Piece): Track | undefined {
  for (const i of [0, -1, 1]) {
    for (const j of [0, -1, 1]) {
      const track = bins.get(binOf(turn + i, offset + j))?.find((t) => isOn(t, piece.from) && isOn(t, piece.to));
      if (track) return track;
    }
  }
  return undefined;
}

const isOn = ({ at, along }: Track, p: Vec3): boolean =>
  Math.abs(along[0] * (p[1] - at[1]) - along[1] * (p[0] - at[0])) < NEAR;

function lay({ at, along }: Track, piece: Piece): Laid {
  const place = (p: Vec3): number => along[0] * (p[0] - at[0]) + along[1] * (p[1] - at[1]);
  const [from, to] = [place(piece.from), place(piece.to)];
  return from < to
    ? { piece, start: from, end: to, startDepth: piece.from[2], endDepth: piece.to[2] }
    : { piece, start: to, end: from, startDepth: piece.to[2], endDepth: piece.from[2] };
}

function walk({ at, along, laid }: Track): ViewLine[] {
  const point = (s: number): Vec2 => [at[0] + along[0] * s + 0, at[1] + along[1] * s + 0];
  if (laid.length === 1) {
    const { start, end, piece } = laid[0]!;
    return [{ from: point(start), to: point(end), kind: piece.kind, part: piece.part, outline: piece.outline }];
  }
  const stops = Float64Array.from(laid.flatMap((l) => [l.start, l.end])).sort();
  const runs: { from: number; to: number; top: Top }[] = [];
  let from = stops[0]!;
  for (const to of stops) {
    if (to - from < SHORT) continue;
    const top = topAt(laid, (from + to) / 2);
    const last = runs[runs.length - 1];
    if (top && last && last.to === from && isSame(last.top, top)) last.to = to;
    else if (top) runs.push({ from, to, top });
    from = to;
  }
  return runs.map((run) => ({ from: point(run.from), to: point(run.to), ...run.top }));
}

type Top = Pick<ViewLine, 'kind' | 'part' | 'outline'>;

const isSame = (a: Top, b: Top): boolean => a.kind === b.kind && a.part === b.part && a.outline === b.outline;

/** What is drawn at one place of a track: visible before hidden, then the nearest; an outline if any there is one. */
function topAt(laid: readonly Laid[], s: number): Top | undefined {
  let best: Piece | undefined;
  let depth = -Infinity;
  let outline = false;
  for (const l of laid) {
    if (l.start >= s || l.end <= s) continue;
    const here = l.startDepth + ((l.endDepth - l.startDepth) * (s - l.start)) / (l.end - l.start);
    outline ||= l.piece.outline;
    if (best && (best.kind === l.piece.kind ? here <= depth : best.kind === 'visible')) continue;
    best = l.piece;
    depth = here;
  }
  return best && { kind: best.kind, part: best.part, outline };
}
