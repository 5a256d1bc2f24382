import { type Depths, freeRuns } from './depths.ts';
import type { Run } from './free-runs.ts';
import type { Grid } from './grid.ts';
import type { Lanes } from './lanes.ts';
import type { Lane, Pattern, Spot } from './pattern.ts';

/** The pattern of a board that the tables hold; an empty one when they hold none. */
export function readPattern(grid: Grid, depths: Depths | undefined, board: number): Pattern {
  const counts = grid.parts.map(() => 0);
  if (!depths) return { board, first: 'rip', lanes: [], spots: [], counts };
  const { lanes, ends, kerf } = depths;
  const cut: Lane[] = [];
  const spots: Spot[] = [];
  for (let at = depths.boards[board]!.deep; at > 0; ) {
    const depth = ends[at]!;
    if (depth < 0) {
      at--;
      continue;
    }
    at -= lanes.depths[depth]! + kerf;
    const to = at + lanes.depths[depth]!;
    cut.push({ from: at, to });
    for (const run of freeRuns(depths, board, at, to)) spots.push(...spotsOf(lanes, depth, at, run, kerf));
  }
  for (const { part } of spots) counts[part]!++;
  return { board, first: lanes.first, lanes: cut.reverse(), spots, counts };
}

/** The parts along one free run of a lane, deepest first. */
function spotsOf(lanes: Lanes, depth: number, at: number, [start, end]: Run, kerf: number): Spot[] {
  const spots: Spot[] = [];
  let along = start;
  let rest = end - start + kerf;
  for (let q = lanes.lastOf[depth]!; q >= 0; q--) {
    const part = lanes.order[q]!;
    const run = lanes.runs[part]!;
    for (let n = lanes.copies[part]![rest]!; n > 0; n--) {
      spots.push(lanes.first === 'rip' ? { part, x: along, y: at } : { part, x: at, y: along });
      along += run;
      rest -= run;
    }
  }
  return spots;
}
