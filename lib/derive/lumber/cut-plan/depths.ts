import { type LaneZones, laneZones } from './free-runs.ts';
import type { Grid } from './grid.ts';
import { type Lanes, NOISE } from './lanes.ts';

/** A board as lanes of one direction see it, in steps. */
interface LaneBoard {
  /** Room across the lanes, and along them, kerf added to both. */
  readonly deep: number;
  readonly long: number;
  readonly zones?: LaneZones;
}

/** The knapsack of lanes over the depth of a board, for one direction. */
export interface Depths {
  readonly lanes: Lanes;
  readonly boards: readonly LaneBoard[];
  readonly kerf: number;
  /** value[y]: the most that lanes from the start up to y bring, kerf added. */
  readonly value: Float64Array;
  /** Depth class of the lane that ends at y; -1 when none does. */
  readonly ends: Int16Array;
  /** Value of a clear lane of each depth class, for the board at hand. */
  readonly clear: Float64Array;
}

export function depthsOf({ boards, kerf }: Grid, lanes: Lanes): Depths {
  const rip = lanes.first === 'rip';
  const seen = boards.map((b): LaneBoard => {
    const [deep, long] = rip ? [b.width + kerf, b.length + kerf] : [b.length + kerf, b.width + kerf];
    return b.zones.length > 0 ? { deep, long, zones: laneZones(b, lanes.first) } : { deep, long };
  });
  const most = seen.reduce((m, b) => Math.max(m, b.deep), 0) + 1;
  return {
    lanes,
    boards: seen,
    kerf,
    value: new Float64Array(most),
    ends: new Int16Array(most),
    clear: new Float64Array(lanes.depths.length),
  };
}

/** No pattern of this direction is worth more: the densest clear lane over the whole depth of the board. */
export function mostOf({ lanes, boards, kerf }: Depths, board: number): number {
  const { deep, long } = boards[board]!;
  let densest = 0;
  for (const c of lanes.active) densest = Math.max(densest, lanes.best[c]![long]! / (lanes.depths[c]! + kerf));
  return densest * deep;
}

/**
 * Lays lanes side by side from `from` on, kerf between them; returns the most they bring. A lane starts at `from`, behind
 * another lane or behind a zone: any plan can be pushed there without touching more.
 */
export function bestDepths(depths: Depths, board: number, from: number): number {
  const { value, ends, kerf, boards } = depths;
  const { deep, zones } = boards[board]!;
  const choices = clearChoices(depths, board);
  value.fill(0, 0, deep + 1);
  ends.fill(-1, 0, deep + 1);
  for (let y = from; y + kerf < deep; y++) {
    if (value[y + 1]! < value[y]!) {
      value[y + 1] = value[y]!;
      ends[y + 1] = -1;
    }
    if (y > from && ends[y]! < 0 && !zones?.starts.includes(y)) continue;
    startLanes(depths, board, y, choices);
  }
  for (let y = Math.max(from, deep - kerf); y < deep; y++) {
    if (value[y + 1]! < value[y]!) {
      value[y + 1] = value[y]!;
      ends[y + 1] = -1;
    }
  }
  return value[deep]!;
}

/** Depth classes worth a lane: a deeper one that brings no more is none. With zones all active ones may be. */
function clearChoices({ lanes, boards, clear }: Depths, board: number): readonly number[] {
  const { long, zones } = boards[board]!;
  let most = 0;
  return lanes.active.filter((c) => {
    clear[c] = lanes.best[c]![long]!;
    const more = clear[c]! > most + NOISE;
    most = Math.max(most, clear[c]!);
    return more || zones !== undefined;
  });
}

/** All lanes that start at y. */
function startLanes(
  { lanes, boards, kerf, value, ends, clear }: Depths,
  board: number,
  y: number,
  choices: readonly number[],
) {
  const { deep, zones } = boards[board]!;
  const sum = value[y]!;
  for (const c of choices) {
    const to = y + lanes.depths[c]! + kerf;
    if (to > deep) break;
    const free = zones?.free(y, to - kerf);
    let more = sum;
    if (free) for (const [a, b] of free) more += lanes.best[c]![b - a + kerf]!;
    else more += clear[c]!;
    if (more > value[to]! + NOISE) {
      value[to] = more;
      ends[to] = c;
    }
  }
}

/** Stretches of a lane of this board that are free of zones. */
export function freeRuns({ boards, kerf }: Depths, board: number, from: number, to: number) {
  const { long, zones } = boards[board]!;
  return zones?.free(from, to) ?? [[0, long - kerf] as const];
}
