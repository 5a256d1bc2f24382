import type { CutKind } from './cut-plan.ts';
import type { Grid } from './grid.ts';

/**
 * What one direction of cutting needs to know. Rip first: a lane is a strip of full length, its depth is its width.
 * Crosscut first: a lane is a section of full width, its depth is its length. A part fits a lane that is at least as
 * deep; if it is less deep, the trimming cut takes the rest.
 */
export interface Lanes {
  readonly first: CutKind;
  /** Size of each part along the lane, kerf added. */
  readonly runs: readonly number[];
  /** Parts by rising depth. */
  readonly order: readonly number[];
  /** The depths there are, rising. */
  readonly depths: readonly number[];
  /** For each depth: place in `order` of the last part that is not deeper. */
  readonly lastOf: readonly number[];
  /** The longest lane there is, kerf added. */
  readonly longest: number;
  /** best[depth][run]: the most valuable parts in a lane of this depth that is `run` long, kerf added. */
  readonly best: readonly Float64Array[];
  /** copies[part][run]: how many of the part the best filling of its own and all lesser depths takes. */
  readonly copies: readonly Uint8Array[];
  /** Depths at which some part has a value now, rising. */
  readonly active: number[];
}

/** Empty tables for all boards of the grid. */
export function lanesOf(grid: Grid, first: CutKind): Lanes {
  const rip = first === 'rip';
  const depth = (i: number): number => (rip ? grid.parts[i]!.width : grid.parts[i]!.length);
  const order = grid.parts.map((_, i) => i).sort((a, b) => depth(a) - depth(b) || a - b);
  const depths = [...new Set(order.map(depth))];
  const longest = grid.boards.reduce((most, b) => Math.max(most, rip ? b.length : b.width), 0) + grid.kerf;
  return {
    first,
    runs: grid.parts.map((p) => (rip ? p.length : p.width) + grid.kerf),
    order,
    depths,
    lastOf: depths.map((d) => order.findLastIndex((i) => depth(i) === d)),
    longest,
    best: depths.map(() => new Float64Array(longest + 1)),
    copies: grid.parts.map(() => new Uint8Array(longest + 1)),
    active: [],
  };
}

/** Values below are nothing: keeps rounding noise out of the comparisons. */
export const NOISE = 1e-12;

/**
 * Fills the tables for these values of the parts, taking at most `left[i]` of part i into one lane: the bounded knapsack
 * of one direction, grown depth by depth.
 */
export function fillLanes(lanes: Lanes, values: ArrayLike<number>, left: ArrayLike<number>, scratch: Scratch): void {
  const { order, lastOf, longest, runs } = lanes;
  let { before, now } = scratch;
  now.fill(0, 0, longest + 1);
  lanes.active.length = 0;
  let depth = 0;
  let changed = false;
  for (let q = 0; q < order.length; q++) {
    const i = order[q]!;
    const most = Math.min(left[i]!, Math.floor(longest / runs[i]!));
    if (values[i]! > NOISE && most > 0) {
      [before, now] = [now, before];
      addPart(before, now, lanes.copies[i]!, longest, runs[i]!, values[i]!, most);
      changed = true;
    } else {
      lanes.copies[i]!.fill(0);
    }
    if (q !== lastOf[depth]) continue;
    if (changed) {
      lanes.best[depth]!.set(now.subarray(0, longest + 1));
      lanes.active.push(depth);
    }
    changed = false;
    depth++;
  }
}

/** Two rows as long as the longest lane. */
export interface Scratch {
  readonly before: Float64Array;
  readonly now: Float64Array;
}

export const scratchFor = (...lanes: readonly Lanes[]): Scratch => {
  const length = Math.max(...lanes.map((l) => l.longest)) + 1;
  return { before: new Float64Array(length), now: new Float64Array(length) };
};

/** One more part may go into the lane, up to `most` times. */
function addPart(
  before: Float64Array,
  now: Float64Array,
  copies: Uint8Array,
  longest: number,
  run: number,
  value: number,
  most: number,
): void {
  now.set(before.subarray(0, Math.min(run, longest + 1)));
  copies.fill(0, 0, run);
  const few = Math.min(most, 255);
  for (let x = run; x <= longest; x++) {
    let best = before[x]!;
    let count = 0;
    for (let n = 1, rest = x - run; n <= few && rest >= 0; n++, rest -= run) {
      const sum = before[rest]! + n * value;
      if (sum > best + NOISE) {
        best = sum;
        count = n;
      }
    }
    now[x] = best;
    copies[x] = count;
  }
}
