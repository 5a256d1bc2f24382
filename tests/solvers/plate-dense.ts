import { type BlockBand, placeOf } from '../../lib/derive/checks/solvers/plate/band.ts';

/** A banded matrix written out, both halves. */
export function dense(band: BlockBand): Float64Array[] {
  const rows = Array.from({ length: 3 * band.nodes }, () => new Float64Array(3 * band.nodes));
  for (let p = 0; p < band.nodes; p++) {
    for (let q = Math.max(0, p - band.reach); q <= p; q++) {
      for (let k = 0; k < 9; k++) {
        const [i, j] = [3 * p + Math.floor(k / 3), 3 * q + (k % 3)];
        if (j > i) continue;
        const value = band.values[placeOf(band, p, q, i - 3 * p) + j - 3 * q]!;
        rows[i]![j] = value;
        rows[j]![i] = value;
      }
    }
  }
  return rows;
}

export const times = (matrix: readonly Float64Array[], x: Float64Array): Float64Array =>
  Float64Array.from(matrix, (row) => row.reduce((sum, value, j) => sum + value * x[j]!, 0));

/** Gauss with the largest pivot of the column, on copies. */
export function solveDense(matrix: readonly Float64Array[], load: Float64Array): Float64Array {
  const a = matrix.map((row, i) => Float64Array.of(...row, load[i]!));
  const n = a.length;
  for (let k = 0; k < n; k++) {
    let best = k;
    for (let i = k + 1; i < n; i++) if (Math.abs(a[i]![k]!) > Math.abs(a[best]![k]!)) best = i;
    [a[k], a[best]] = [a[best]!, a[k]!];
    for (let i = k + 1; i < n; i++) eliminate(a[i]!, a[k]!, k);
  }
  const x = new Float64Array(n);
  for (let k = n - 1; k >= 0; k--) {
    let sum = a[k]![n]!;
    for (let j = k + 1; j < n; j++) sum -= a[k]![j]! * x[j]!;
    x[k] = sum / a[k]![k]!;
  }
  return x;
}

function eliminate(row: Float64Array, pivotRow: Float64Array, k: number): void {
  const factor = row[k]! / pivotRow[k]!;
  if (factor === 0) return;
  for (let j = k; j < row.length; j++) row[j]! -= factor * pivotRow[j]!;
}
