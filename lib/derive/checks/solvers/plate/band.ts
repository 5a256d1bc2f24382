/**
 * A symmetric matrix of 3 × 3 blocks, one for each pair of nodes that lie at most `reach` numbers apart; entries on and
 * below the diagonal, row by row. The three rows of a node begin at the same column, so that products of rows run over
 * neighboring places.
 *
 * ```
 *   row r of node p:  │ p-reach │ … │ p-1 │ p │     3 (reach + 1) entries
 * ```
 */
export interface BlockBand {
  readonly nodes: number;
  readonly reach: number;
  /** Entries of a row: 3 (reach + 1). */
  readonly width: number;
  readonly values: Float64Array;
}

export function blockBand(nodes: number, reach: number): BlockBand {
  const width = 3 * (reach + 1);
  return { nodes, reach, width, values: new Float64Array(3 * nodes * width) };
}

/** Place of row `row` of node p in column 0 of node q, q ≤ p ≤ q + reach. */
export const placeOf = ({ reach, width }: BlockBand, p: number, q: number, row = 0): number =>
  (3 * p + row) * width + 3 * (q - p + reach);

/** Makes one way of one node immovable: its row and column 0, its own entry 1. */
export function strike(band: BlockBand, way: number): void {
  const { nodes, reach, values } = band;
  const node = Math.floor(way / 3);
  const k = way - 3 * node;
  const own = placeOf(band, node, node, k) + k;
  values.fill(0, own + 1 - (3 * reach + k + 1), own);
  for (let p = node; p <= Math.min(nodes - 1, node + reach); p++) {
    for (let row = 0; row < 3; row++) values[placeOf(band, p, node, row) + k] = 0;
  }
  values[own] = 1;
}
