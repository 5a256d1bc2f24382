import type { Grid } from './grid.ts';
import { type Lane, type Pattern, type Spot, take } from './pattern.ts';
import type { Pricer } from './pricer.ts';

/** Times a pattern is carried on behind the lanes that are kept. */
const ROUNDS = 12;

/**
 * A pattern that keeps the demand. Its lanes each keep it, but not all together; so keep lanes from the datum on as long
 * as they do, and find the best lanes for the rest of the board and of the demand, again and again. Leaves the tables of
 * the pricer filled for that rest.
 */
export function withinDemand(
  grid: Grid,
  pricer: Pricer,
  values: ArrayLike<number>,
  pattern: Pattern,
  demand: readonly number[],
): Pattern {
  const left = [...demand];
  const lanes: Lane[] = [];
  const spots: Spot[] = [];
  let rest = pattern;
  for (let n = 0; n < ROUNDS && rest.spots.length > 0; n++) {
    const kept = keepLanes(rest, left);
    lanes.push(...kept.lanes);
    spots.push(...kept.spots);
    if (kept.lanes.length === rest.lanes.length || kept.lanes.length === 0) break;
    pricer.prepare(
      left.map((count, i) => (count > 0 ? values[i]! : 0)),
      left,
    );
    pricer.bestFrom(pattern.board, pattern.first, lanes[lanes.length - 1]!.to + grid.kerf);
    rest = pricer.pattern();
  }
  const counts = pattern.counts.map(() => 0);
  for (const { part } of spots) counts[part]!++;
  return take(grid, { ...pattern, lanes, spots, counts }, [...demand]);
}

/** The lanes from the datum on that keep what is left, and takes their parts out of it; the first is trimmed if it must. */
function keepLanes(pattern: Pattern, left: number[]): { lanes: Lane[]; spots: Spot[] } {
  const lanes: Lane[] = [];
  const spots: Spot[] = [];
  for (const lane of lanesWithSpots(pattern)) {
    const own = lane.spots.filter(({ part }) => left[part]! > 0 && left[part]!-- > 0);
    if (own.length < lane.spots.length && lanes.length > 0) {
      for (const { part } of own) left[part]!++;
      break;
    }
    lanes.push(lane.lane);
    spots.push(...own);
  }
  return { lanes, spots };
}

function lanesWithSpots({ lanes, spots, first }: Pattern) {
  return lanes.map((lane) => ({ lane, spots: spots.filter((s) => (first === 'rip' ? s.y : s.x) === lane.from) }));
}
