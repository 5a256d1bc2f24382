import type { Row } from './row.ts';
import type { StripModel } from './strip-model.ts';

/**
 * The most reserve any slide can give, in closed form. Say strip m lies over the center line: those left of it lose
 * slope · start, those right of it gain as much, so the best start is where the two limits cross, kept within the range in
 * which the row covers the blank. Taking the wrong m only gives less, so the best over all m is exact.
 * Not looked at: a seam on the center line, and rips that use up an outer strip; both only take away.
 */
export function mostReserve(model: StripModel, row: Row): number {
  const { strips, slope, half } = model;
  const { edges, spare } = row;
  const total = edges[strips]!;
  if (slope === 0) return least(spare, strips);
  const after = suffix(row, strips, slope);
  let best = Number.NEGATIVE_INFINITY;
  let left = Number.POSITIVE_INFINITY;
  for (let m = 0; m < strips; m++) {
    const right = after[m + 1]!;
    const start = Math.min(-half, Math.max(half - total, crossing(left, right, slope)));
    const reserve = Math.min(spare[m]!, left - slope * start, right + slope * start);
    if (reserve > best) best = reserve;
    left = Math.min(left, spare[m]! - slope * edges[m + 1]!);
  }
  return best;
}

const SUFFIX = new Float64Array(65);

/** The limits of the strips from j on when all of them lie right of the center line, for a start of 0. */
function suffix(row: Row, strips: number, slope: number): Float64Array {
  SUFFIX[strips] = Number.POSITIVE_INFINITY;
  for (let j = strips - 1; j >= 0; j--) SUFFIX[j] = Math.min(SUFFIX[j + 1]!, row.spare[j]! + slope * row.edges[j]!);
  return SUFFIX;
}

function crossing(left: number, right: number, slope: number): number {
  if (left === Number.POSITIVE_INFINITY && right === Number.POSITIVE_INFINITY) return 0;
  return (left - right) / (2 * slope);
}

function least(values: Float64Array, count: number): number {
  let low = Number.POSITIVE_INFINITY;
  for (let j = 0; j < count; j++) low = Math.min(low, values[j]!);
  return low;
}
