import { type BlockBand, placeOf } from './band.ts';

/** Solves L Lᵀ x = load in place, `band` as left by the factoring. */
export function solveBand(band: BlockBand, x: Float64Array): void {
  for (let p = firstLoaded(x); p < band.nodes; p++) forward(band, x, p);
  for (let p = band.nodes - 1; p >= 0; p--) backward(band, x, p);
}

/** The first node with a load: before it nothing happens on the way forward. */
function firstLoaded(x: Float64Array): number {
  const found = x.findIndex((value) => value !== 0);
  return found < 0 ? x.length : Math.floor(found / 3);
}

function forward(band: BlockBand, x: Float64Array, p: number): void {
  const { reach, width, values: v } = band;
  const first = Math.max(0, p - reach);
  const own = placeOf(band, p, p);
  const own1 = own + width;
  const own2 = own1 + width;
  let s0 = x[3 * p]!;
  let s1 = x[3 * p + 1]!;
  let s2 = x[3 * p + 2]!;
  for (let a = placeOf(band, p, first), k = 3 * first; a < own; a++, k++) {
    const xk = x[k]!;
    s0 -= v[a]! * xk;
    s1 -= v[a + width]! * xk;
    s2 -= v[a + 2 * width]! * xk;
  }
  s0 *= v[own]!;
  s1 = (s1 - v[own1]! * s0) * v[own1 + 1]!;
  s2 = (s2 - v[own2]! * s0 - v[own2 + 1]! * s1) * v[own2 + 2]!;
  x[3 * p] = s0;
  x[3 * p + 1] = s1;
  x[3 * p + 2] = s2;
}

function backward(band: BlockBand, x: Float64Array, p: number): void {
  const { reach, width, values: v } = band;
  const first = Math.max(0, p - reach);
  const own = placeOf(band, p, p);
  const own1 = own + width;
  const own2 = own1 + width;
  const x2 = x[3 * p + 2]! * v[own2 + 2]!;
  const x1 = (x[3 * p + 1]! - v[own2 + 1]! * x2) * v[own1 + 1]!;
  const x0 = (x[3 * p]! - v[own1]! * x1 - v[own2]! * x2) * v[own]!;
  for (let a = placeOf(band, p, first), k = 3 * first; a < own; a++, k++) {
    x[k]! -= v[a]! * x0 + v[a + width]! * x1 + v[a + 2 * width]! * x2;
  }
  x[3 * p] = x0;
  x[3 * p + 1] = x1;
  x[3 * p + 2] = x2;
}
