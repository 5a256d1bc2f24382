import { type BlockBand, placeOf } from './band.ts';

/**
 * Turns a matrix into its factor L, A = L Lᵀ, in place, block by block; the diagonal of L is kept as its inverse.
 *
 * @throws RangeError when the matrix is not positive definite.
 */
export function factorBand(band: BlockBand): void {
  const { nodes, reach, width, values } = band;
  for (let p = 0; p < nodes; p++) {
    const first = Math.max(0, p - reach);
    const rowP = placeOf(band, p, first);
    for (let q = first; q < p; q++) {
      const at = placeOf(band, p, q);
      reduceBlock(values, width, rowP, placeOf(band, q, first), at);
      divideBlock(values, width, at, placeOf(band, q, q));
    }
    const own = placeOf(band, p, p);
    reduceBlock(values, width, rowP, rowP, own);
    factorBlock(values, width, own, p);
  }
}

/** Takes from the block at `at` the products of the rows that begin at `p` and `q`, up to the column of that block. */
function reduceBlock(v: Float64Array, width: number, p: number, q: number, at: number): void {
  const at1 = at + width;
  const at2 = at1 + width;
  let s00 = v[at]!;
  let s01 = v[at + 1]!;
  let s02 = v[at + 2]!;
  let s10 = v[at1]!;
  let s11 = v[at1 + 1]!;
  let s12 = v[at1 + 2]!;
  let s20 = v[at2]!;
  let s21 = v[at2 + 1]!;
  let s22 = v[at2 + 2]!;
  for (let a = p, b = q; a < at; a++, b++) {
    const a0 = v[a]!;
    const a1 = v[a + width]!;
    const a2 = v[a + 2 * width]!;
    const b0 = v[b]!;
    const b1 = v[b + width]!;
    const b2 = v[b + 2 * width]!;
    s00 -= a0 * b0;
    s01 -= a0 * b1;
    s02 -= a0 * b2;
    s10 -= a1 * b0;
    s11 -= a1 * b1;
    s12 -= a1 * b2;
    s20 -= a2 * b0;
    s21 -= a2 * b1;
    s22 -= a2 * b2;
  }
  v[at] = s00;
  v[at + 1] = s01;
  v[at + 2] = s02;
  v[at1] = s10;
  v[at1 + 1] = s11;
  v[at1 + 2] = s12;
  v[at2] = s20;
  v[at2 + 1] = s21;
  v[at2 + 2] = s22;
}

/** Divides the block at `at` by the finished diagonal block at `d`, from the right: X Lᵀ = S. */
function divideBlock(v: Float64Array, width: number, at: number, d: number): void {
  const d1 = d + width;
  const d2 = d1 + width;
  for (let row = 0, k = at; row < 3; row++, k += width) {
    const x0 = v[k]! * v[d]!;
    const x1 = (v[k + 1]! - x0 * v[d1]!) * v[d1 + 1]!;
    v[k] = x0;
    v[k + 1] = x1;
    v[k + 2] = (v[k + 2]! - x0 * v[d2]! - x1 * v[d2 + 1]!) * v[d2 + 2]!;
  }
}

function factorBlock(v: Float64Array, width: number, d: number, node: number): void {
  const d1 = d + width;
  const d2 = d1 + width;
  const i0 = 1 / root(v[d]!, node);
  const l10 = v[d1]! * i0;
  const i1 = 1 / root(v[d1 + 1]! - l10 * l10, node);
  const l20 = v[d2]! * i0;
  const l21 = (v[d2 + 1]! - l20 * l10) * i1;
  v[d] = i0;
  v[d1] = l10;
  v[d1 + 1] = i1;
  v[d2] = l20;
  v[d2 + 1] = l21;
  v[d2 + 2] = 1 / root(v[d2 + 2]! - l20 * l20 - l21 * l21, node);
}

function root(pivot: number, node: number): number {
  if (!(pivot > 0)) throw new RangeError(`node ${node} has a pivot of ${pivot}; it must be above 0`);
  return Math.sqrt(pivot);
}
