/** Boards by strip, left to right; -1 below a single layer. */
export interface Arrangement {
  readonly shows: readonly number[];
  readonly bottoms: readonly number[];
}
