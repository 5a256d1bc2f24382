/** A stretch of an edge by its parameter: 0 at the start, 1 at the end. */
export type Interval = readonly [from: number, to: number];

/** The stretches covered by any of the intervals, in order; gaps up to `join` are closed. */
export function union(intervals: readonly Interval[], join: number): Interval[] {
  const sorted = [...intervals].sort((a, b) => a[0] - b[0]);
  const merged: [number, number][] = [];
  for (const [from, to] of sorted) {
    const last = merged[merged.length - 1];
    if (last && from <= last[1] + join) last[1] = Math.max(last[1], to);
    else merged.push([from, to]);
  }
  return merged;
}

/** What a row of intervals in order leaves of 0 to 1; stretches up to `drop` are left out. */
export function gaps(intervals: readonly Interval[], drop: number): Interval[] {
  const ends = [0, ...intervals.flat(), 1];
  const found: Interval[] = [];
  for (let i = 0; i < ends.length; i += 2) {
    if (ends[i + 1]! - ends[i]! > drop) found.push([ends[i]!, ends[i + 1]!]);
  }
  return found;
}
