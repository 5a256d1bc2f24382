import type { CutKind } from './cut-plan.ts';
import { laneZones, type Run } from './free-runs.ts';
import type { Grid } from './grid.ts';
import type { Lane, Pattern, Spot } from './pattern.ts';

/** A lane and where its pieces lie along it. */
interface FilledLane extends Lane {
  readonly pieces: readonly { readonly part: number; readonly along: number }[];
}

/**
 * A pattern of one board and direction that holds all these pieces (numbers of their parts), or the proof that there is
 * none: every set of pieces as the next lane, at every place where a lane may start, every way to share it out among the
 * stretches between zones. A lane may always be moved towards the datum until it meets the lane before or a zone.
 */
export function fewLanes(grid: Grid, board: number, first: CutKind, pieces: readonly number[]): Pattern | undefined {
  const { kerf, parts, boards } = grid;
  const { length, width } = boards[board]!;
  const rip = first === 'rip';
  const [deep, long] = rip ? [width, length] : [length, width];
  const depth = (part: number): number => (rip ? parts[part]!.width : parts[part]!.length);
  const run = (part: number): number => (rip ? parts[part]!.length : parts[part]!.width);
  const zones = laneZones(boards[board]!, first);
  const failed = new Set<number>();

  const laneAt = (from: number, mask: number): FilledLane | undefined => {
    const own = pieces.filter((_, k) => (mask >> k) & 1);
    const to = from + Math.max(...own.map(depth));
    if (to > deep) return undefined;
    const free = zones.free(from, to) ?? [[0, long] as const];
    const laid = shareOut(own, free, run, kerf);
    return laid && { from, to, pieces: laid };
  };
  const lanesFrom = (from: number, rest: number): readonly FilledLane[] | undefined => {
    if (rest === 0) return [];
    const key = from * 2 ** pieces.length + rest;
    if (failed.has(key)) return undefined;
    for (const start of [from, ...zones.starts.filter((z) => z > from)]) {
      for (let mask = rest; mask > 0; mask = (mask - 1) & rest) {
        const lane = laneAt(start, mask);
        const others = lane && lanesFrom(lane.to + kerf, rest & ~mask);
        if (others) return [lane, ...others];
      }
    }
    failed.add(key);
    return undefined;
  };
  const lanes = lanesFrom(0, 2 ** pieces.length - 1);
  return lanes && patternOf(grid, board, first, lanes);
}

/** Places of the pieces along the stretches, each piece tried in each. */
function shareOut(
  pieces: readonly number[],
  free: readonly Run[],
  run: (part: number) => number,
  kerf: number,
): { part: number; along: number }[] | undefined {
  const [part, ...rest] = pieces;
  if (part === undefined) return [];
  for (const [n, [from, to]] of free.entries()) {
    if (to - from < run(part)) continue;
    const left: readonly Run[] = free.with(n, [from + run(part) + kerf, to]);
    const others = shareOut(rest, left, run, kerf);
    if (others) return [{ part, along: from }, ...others];
  }
  return undefined;
}

function patternOf({ parts }: Grid, board: number, first: CutKind, filled: readonly FilledLane[]): Pattern {
  const counts = parts.map(() => 0);
  const spots = filled.flatMap(({ from, pieces }) =>
    pieces.map(({ part, along }): Spot => {
      counts[part]!++;
      return first === 'rip' ? { part, x: along, y: from } : { part, x: from, y: along };
    }),
  );
  return { board, first, lanes: filled.map(({ from, to }) => ({ from, to })), spots, counts };
}
