/**
 * A symmetric matrix, each column from its first entry that is not 0 down to the diagonal.
 *
 * ```
 *   x . . x
 *     x x .
 *       x x      entry (i, j), i ≤ j, is values[start[j] + i - first[j]]
 *         x
 * ```
 */
export interface Skyline {
  readonly size: number;
  readonly first: Int32Array;
  readonly start: Int32Array;
  readonly values: Float64Array;
}

/** A matrix as L D Lᵀ, ready for any number of right-hand sides. */
export interface Factored {
  /** Movements that nothing resists, each as long as the matrix, 1 at its own last entry; none for a sound frame. */
  readonly loose: readonly Float64Array[];
  /** Solves in place. Along a loose movement the answer is 0. */
  solve(load: Float64Array): void;
}

/**
 * A movement is loose when its energy is below this part of what its entries would store one by one: rounding leaves at
 * most 4e-16, a base with soft joints keeps 5e-8, the same under a top a million times too stiff 8e-11 (computed).
 */
const LOOSE = 1e-14;

/** An empty matrix for columns that begin at the rows `first`. */
export function skyline(first: Int32Array): Skyline {
  const size = first.length;
  const start = new Int32Array(size + 1);
  for (let j = 0; j < size; j++) start[j + 1] = start[j]! + j - first[j]! + 1;
  return { size, first, start, values: new Float64Array(start[size]!) };
}

/** Factors the matrix in place, column by column. A pivot that vanishes is set aside as a loose movement. */
export function factor(m: Skyline): Factored {
  const { size, first, start, values } = m;
  const inverse = new Float64Array(size);
  const diagonal = Float64Array.from({ length: size }, (_, j) => values[start[j + 1]! - 1]!);
  const loose: Float64Array[] = [];
  for (let j = 0; j < size; j++) {
    for (let i = first[j]! + 1; i < j; i++) reduce(m, i, j);
    const pivot = settle(m, inverse, j);
    const mode = looseMode(m, diagonal, j, pivot);
    if (mode) loose.push(mode);
    else inverse[j] = 1 / pivot;
  }
  return { loose, solve: (load) => substitute(m, inverse, load) };
}

function reduce({ first, start, values }: Skyline, i: number, j: number): void {
  const si = start[i]! - first[i]!;
  const sj = start[j]! - first[j]!;
  let sum = values[sj + i]!;
  for (let r = Math.max(first[i]!, first[j]!); r < i; r++) sum -= values[si + r]! * values[sj + r]!;
  values[sj + i] = sum;
}

/** Turns the reduced column into one of L and answers its pivot. */
function settle({ first, start, values }: Skyline, inverse: Float64Array, j: number): number {
  const sj = start[j]! - first[j]!;
  let pivot = values[sj + j]!;
  for (let i = first[j]!; i < j; i++) {
    const g = values[sj + i]!;
    const l = g * inverse[i]!;
    values[sj + i] = l;
    pivot -= l * g;
  }
  return pivot;
}

/** The movement that belongs to pivot j: 1 there, nothing after it, no force before it. Undefined when it is resisted. */
function looseMode(m: Skyline, diagonal: Float64Array, j: number, pivot: number): Float64Array | undefined {
  const mode = new Float64Array(m.size);
  mode[j] = 1;
  backwards(m, mode, j);
  const apart = mode.reduce((sum, x, i) => sum + diagonal[i]! * x * x, 0);
  return pivot <= LOOSE * apart ? mode : undefined;
}

function backwards({ first, start, values }: Skyline, x: Float64Array, last: number): void {
  for (let k = last; k > 0; k--) {
    const sk = start[k]! - first[k]!;
    const xk = x[k]!;
    if (xk === 0) continue;
    for (let i = first[k]!; i < k; i++) x[i]! -= values[sk + i]! * xk;
  }
}

function substitute(m: Skyline, inverse: Float64Array, x: Float64Array): void {
  const { size, first, start, values } = m;
  for (let j = 0; j < size; j++) {
    const sj = start[j]! - first[j]!;
    let sum = x[j]!;
    for (let i = first[j]!; i < j; i++) sum -= values[sj + i]! * x[i]!;
    x[j] = sum;
  }
  for (let j = 0; j < size; j++) x[j]! *= inverse[j]!;
  backwards(m, x, size - 1);
}
