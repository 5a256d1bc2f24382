import type { Plate } from '../../lib/derive/checks/solvers/plate/plate.ts';
import { evenly } from './plate-demo.ts';

// A top as crossed beams, written apart from the plate: beams of E b h³/12 along and across, twist constant b h³/6 in both
// directions, ways of a node: down, slope along, slope across. Solved by a plain banded elimination.

export interface Grillage {
  readonly xs: Float64Array;
  readonly ys: Float64Array;
  /** Rows of the factor, from the diagonal down. */
  readonly band: Float64Array[];
}

/** One beam between two nodes: bending with the slope of its own direction, twist with the other slope. */
function beamStiffness(bend: number, twist: number, length: number, own: 1 | 2): number[][] {
  const other = 3 - own;
  const k = Array.from({ length: 6 }, () => new Array<number>(6).fill(0));
  const ways = [0, own, 3, 3 + own];
  const cubic = [
    [12, 6 * length, -12, 6 * length],
    [6 * length, 4 * length ** 2, -6 * length, 2 * length ** 2],
    [-12, -6 * length, 12, -6 * length],
    [6 * length, 2 * length ** 2, -6 * length, 4 * length ** 2],
  ];
  cubic.forEach((row, i) => {
    row.forEach((value, j) => {
      k[ways[i]!]![ways[j]!]! += (value * bend) / length ** 3;
    });
  });
  for (const i of [0, 3]) for (const j of [0, 3]) k[i + other]![j + other]! += ((i === j ? 1 : -1) * twist) / length;
  return k;
}

/** Breadth of plate that belongs to a line. */
const breadth = (lines: Float64Array, k: number): number =>
  ((lines[k + 1] ?? lines[k]!) - (lines[k - 1] ?? lines[k]!)) / 2;

export function grillage(
  plate: Pick<Plate, 'wood' | 'thickness' | 'supports'>,
  size: readonly [number, number],
): Grillage {
  const [xs, ys] = [evenly(size[0], 42), evenly(size[1], 24)];
  const { wood, thickness } = plate;
  const reach = 3 * ys.length + 3;
  const band = Array.from({ length: 3 * xs.length * ys.length }, () => new Float64Array(reach));
  const node = (i: number, j: number): number => i * ys.length + j;
  const add = (a: number, b: number, k: number[][]): void => {
    for (let i = 0; i < 6; i++) {
      for (let j = 0; j <= i; j++) {
        const [p, q] = [i, j].map((w) => 3 * (w < 3 ? a : b) + (w % 3)) as [number, number];
        band[q]![p - q]! += k[i]![j]!;
      }
    }
  };
  xs.forEach((x, i) => {
    ys.forEach((y, j) => {
      if (i + 1 < xs.length) {
        const cube = breadth(ys, j) * thickness((x + xs[i + 1]!) / 2, y) ** 3;
        const k = beamStiffness((wood.along * cube) / 12, (wood.shear * cube) / 6, xs[i + 1]! - x, 1);
        add(node(i, j), node(i + 1, j), k);
      }
      if (j + 1 < ys.length) {
        const cube = breadth(xs, i) * thickness(x, (y + ys[j + 1]!) / 2) ** 3;
        const k = beamStiffness((wood.across * cube) / 12, (wood.shear * cube) / 6, ys[j + 1]! - y, 2);
        add(node(i, j), node(i, j + 1), k);
      }
      const held = plate.supports.some(
        ({ from, to }) => Math.abs(x - from[0]) < 1e-6 && y > from[1] - 1e-6 && y < to[1] + 1e-6,
      );
      if (held) band[3 * node(i, j)]![0]! += 1e12;
    });
  });
  eliminate(band);
  return { xs, ys, band };
}

/** Turns the matrix into L D Lᵀ: each row keeps its pivot and the column of L below it. */
function eliminate(band: Float64Array[]): void {
  band.forEach((row, k) => {
    const last = Math.min(row.length, band.length - k);
    const column = row.map((value) => value / row[0]!);
    for (let i = 1; i < last; i++) {
      if (row[i] === 0) continue;
      const target = band[k + i]!;
      for (let j = i; j < last; j++) target[j - i]! -= column[i]! * row[j]!;
    }
    row.set(column.subarray(1), 1);
  });
}

/** How far a place goes down under a force right on it. */
export function grillageGive({ xs, ys, band }: Grillage, [x, y]: readonly [number, number], force: number): number {
  const nearest = (lines: Float64Array, at: number): number => lines.findIndex((line) => Math.abs(line - at) < 1e-6);
  const way = 3 * (nearest(xs, x) * ys.length + nearest(ys, y));
  const moves = new Float64Array(band.length);
  moves[way] = force;
  band.forEach((row, k) => {
    for (let i = 1; i < row.length && k + i < moves.length; i++) moves[k + i]! -= row[i]! * moves[k]!;
  });
  for (let k = moves.length - 1; k >= 0; k--) {
    const row = band[k]!;
    let sum = moves[k]! / row[0]!;
    for (let i = 1; i < row.length && k + i < moves.length; i++) sum -= row[i]! * moves[k + i]!;
    moves[k] = sum;
  }
  return moves[way]!;
}
