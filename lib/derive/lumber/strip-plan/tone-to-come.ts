/**
 * The least sum of steps from a board through all boards still to place: to the nearer end of their tones, and across them.
 * `tone` in any unit.
 */
export function toneToCome(tone: Float64Array, boards: readonly number[], used: Uint8Array, last: number): number {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const i of boards) {
    if (used[i] || i === last) continue;
    if (tone[i]! < low) low = tone[i]!;
    if (tone[i]! > high) high = tone[i]!;
  }
  if (high < low) return 0;
  const at = tone[last]!;
  return high - low + Math.min(Math.abs(at - low), Math.abs(at - high));
}
