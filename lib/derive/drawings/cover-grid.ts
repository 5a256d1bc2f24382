import type { Vec3 } from '../../geometry/vec.ts';
import type { Cover } from './cover.ts';

/** Calls back once for every cover that may lie over or under the segment, until the answer is `enough`. */
export type CoverGrid = (a: Vec3, b: Vec3, visit: (cover: Cover) => 'enough' | undefined) => void;

/** Cells along the longer side of the view; our convention. */
const CELLS = 64;

/** Room around a segment, mm, so that rounding never misses a cell. */
const MARGIN = 0.01;

const NONE: readonly number[] = [];

/** A square raster over the view plane. */
interface Raster {
  readonly left: number;
  readonly low: number;
  readonly size: number;
  readonly columns: number;
  readonly rows: number;
}

type Range = readonly [from: number, to: number];

/** Sorts covers into the cells of a raster, so that a segment is held against those nearby only. */
export function coverGrid(covers: readonly Cover[]): CoverGrid {
  if (covers.length === 0) return () => undefined;
  const raster = rasterOver(covers);
  const cells = cellsOf(covers, raster);
  const seenIn = new Int32Array(covers.length);
  let query = 0;
  return (a, b, visit) => {
    query++;
    for (const cell of cellsAlong(raster, a, b)) {
      for (const index of cells[cell] ?? NONE) {
        if (seenIn[index] === query) continue;
        seenIn[index] = query;
        if (visit(covers[index]!)) return;
      }
    }
  };
}

function rasterOver(covers: readonly Cover[]): Raster {
  let [left, right, low, high] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { corners } of covers) {
    for (const p of corners) {
      if (p[0] < left) left = p[0];
      if (p[0] > right) right = p[0];
      if (p[1] < low) low = p[1];
      if (p[1] > high) high = p[1];
    }
  }
  const size = Math.max(right - left, high - low, 1) / CELLS;
  return { left, low, size, columns: Math.floor((right - left) / size) + 1, rows: Math.floor((high - low) / size) + 1 };
}

function range([p, q, r]: Cover['corners'], axis: 0 | 1): Range {
  const [a, b, c] = [p[axis], q[axis], r[axis]];
  return [Math.min(a, b, c), Math.max(a, b, c)];
}

/** The covers over each cell; most cells of a table have none. */
function cellsOf(covers: readonly Cover[], raster: Raster): (number[] | undefined)[] {
  const cells = new Array<number[] | undefined>(raster.columns * raster.rows).fill(undefined);
  covers.forEach(({ corners }, index) => {
    const [left, right] = columnsOf(raster, range(corners, 0));
    const [low, high] = rowsOf(raster, range(corners, 1));
    for (let row = low; row <= high; row++) {
      for (let column = left; column <= right; column++) {
        const cell = row * raster.columns + column;
        const here = cells[cell];
        if (here) here.push(index);
        else cells[cell] = [index];
      }
    }
  });
  return cells;
}

const place = (x: number, size: number, count: number): number =>
  Math.min(count - 1, Math.max(0, Math.floor(x / size)));

const columnsOf = ({ left, size, columns }: Raster, [from, to]: Range): Range => [
  place(from - MARGIN - left, size, columns),
  place(to + MARGIN - left, size, columns),
];

const rowsOf = ({ low, size, rows }: Raster, [from, to]: Range): Range => [
  place(from - MARGIN - low, size, rows),
  place(to + MARGIN - low, size, rows),
];

/** The cells that a segment runs through, row by row. */
function cellsAlong(raster: Raster, a: Vec3, b: Vec3): number[] {
  const [p, q] = a[1] <= b[1] ? [a, b] : [b, a];
  const [first, last] = rowsOf(raster, [p[1], q[1]]);
  const cells: number[] = [];
  for (let row = first; row <= last; row++) {
    const [from, to] = columnsIn(raster, row, p, q);
    for (let column = from; column <= to; column++) cells.push(row * raster.columns + column);
  }
  return cells;
}

/** The columns of one row that a segment runs through; `q` is not below `p`. */
function columnsIn(raster: Raster, row: number, p: Vec3, q: Vec3): Range {
  const rise = q[1] - p[1];
  const low = raster.low + row * raster.size;
  if (!(rise > 0)) return columnsOf(raster, p[0] < q[0] ? [p[0], q[0]] : [q[0], p[0]]);
  const x0 = p[0] + (q[0] - p[0]) * share((low - MARGIN - p[1]) / rise);
  const x1 = p[0] + (q[0] - p[0]) * share((low + raster.size + MARGIN - p[1]) / rise);
  return columnsOf(raster, x0 < x1 ? [x0, x1] : [x1, x0]);
}

const share = (t: number): number => Math.min(1, Math.max(0, t));
