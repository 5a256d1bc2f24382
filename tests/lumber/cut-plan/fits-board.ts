import type { AvoidZone, CutBoard, CutPart } from '../../../lib/derive/lumber/cut-plan/cut-problem.ts';

/** Along and across the lanes of one direction. */
interface Sized {
  readonly run: number;
  readonly depth: number;
}
interface Across {
  readonly from: number;
  readonly to: number;
  readonly near: number;
  readonly far: number;
}

/**
 * Whether pieces can be cut from a board in two stages and a trimming cut, by trying every way to deal them out to lanes,
 * every order and every start of the lanes, and every way to deal them out to the stretches between zones. All sizes are
 * whole numbers. It shares nothing with the search.
 */
export function fitsBoard(pieces: readonly CutPart[], board: CutBoard, kerf: number): boolean {
  const rip = pieces.map((p): Sized => ({ run: p.length, depth: p.width }));
  const crosscut = pieces.map((p): Sized => ({ run: p.width, depth: p.length }));
  const turned = board.avoid.map(
    ({ from, to, near, far }): AvoidZone => ({ from: near, to: far, near: from, far: to }),
  );
  return (
    fitsLanes(rip, board.length, board.width, board.avoid, kerf) ||
    fitsLanes(crosscut, board.width, board.length, turned, kerf)
  );
}

function fitsLanes(
  pieces: readonly Sized[],
  long: number,
  deep: number,
  zones: readonly Across[],
  kerf: number,
): boolean {
  const laneFits = (lane: readonly Sized[], y: number, to: number): boolean =>
    to <= deep && fitsLane(lane, stretches(long, zones, y, to), kerf);
  const startsAt = (y: number, left: readonly Sized[]): boolean =>
    splits(left).some(([lane, rest]) => {
      const to = y + Math.max(...lane.map((p) => p.depth));
      return laneFits(lane, y, to) && from(to + kerf, rest);
    });
  const from = (start: number, left: readonly Sized[]): boolean => {
    for (let y = start; y < deep && left.length > 0; y++) if (startsAt(y, left)) return true;
    return left.length === 0;
  };
  return from(0, pieces);
}

/** What of a lane touches no zone. */
function stretches(long: number, zones: readonly Across[], y: number, to: number): number[] {
  const taken = Array.from({ length: long }, (_, x) =>
    zones.some((z) => z.near < to && y < z.far && z.from <= x && x < z.to),
  );
  const found: number[] = [];
  let run = 0;
  for (const is of [...taken, true]) {
    if (!is) run++;
    else if (run > 0) found.push(run);
    if (is) run = 0;
  }
  return found;
}

function fitsLane(pieces: readonly Sized[], rooms: readonly number[], kerf: number): boolean {
  const [first, ...rest] = pieces;
  if (!first) return true;
  return rooms.some((room, n) => {
    if (room < first.run) return false;
    return fitsLane(rest, rooms.with(n, room - first.run - kerf), kerf);
  });
}

/** Every choice of some and the rest. */
function splits<T>(all: readonly T[]): [T[], T[]][] {
  return Array.from({ length: 2 ** all.length - 1 }, (_, n): [T[], T[]] => [
    all.filter((_, i) => ((n + 1) >> i) & 1),
    all.filter((_, i) => !(((n + 1) >> i) & 1)),
  ]);
}
