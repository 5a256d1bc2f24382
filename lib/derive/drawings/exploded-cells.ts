import type { Vec2, Vec3 } from '../../geometry/vec.ts';
import type { Mm } from '../../units/mm.ts';
import { type Cover, coversOf, depthAt } from './cover.ts';
import type { Projection } from './projection.ts';

/** Which piece one sees where: square cells over a view, rows from below. */
export interface SeenCells {
  /** mm. */
  readonly size: Mm;
  /** Lower left corner, view coordinates. */
  readonly origin: Vec2;
  readonly columns: number;
  readonly rows: number;
  /** Of each cell the place of its solid in the list, or -1. */
  readonly seen: Int16Array;
  /** The same for its face: a number for each face of all solids, or -1. */
  readonly faces: Int32Array;
  /** Of each cell how near to the viewer that piece is there, mm of the true view; -Infinity where there is none. */
  readonly depth: Float64Array;
  /** How many cells each solid would have if it stood alone. */
  readonly alone: readonly number[];
}

/** Cells left free around everything; our convention. */
const BORDER = 2;

/** More faces than a piece has. */
const FACES = 2 ** 16;

/** @param across cells over the longer side of the view. */
export function seenCells(projections: readonly Projection[], across: number): SeenCells {
  const xs = projections.flatMap(({ points }) => points.map((p) => p[0]));
  const ys = projections.flatMap(({ points }) => points.map((p) => p[1]));
  const [left, low] = [least(xs), least(ys)];
  const [wide, tall] = [-least(xs.map((x) => -x)) - left, -least(ys.map((y) => -y)) - low];
  const size = Math.max(wide, tall) / across;
  const columns = Math.ceil(wide / size) + 2 * BORDER;
  const rows = Math.ceil(tall / size) + 2 * BORDER;
  const origin: Vec2 = [left - BORDER * size, low - BORDER * size];
  const seen = new Int16Array(columns * rows).fill(-1);
  const faces = new Int32Array(columns * rows).fill(-1);
  const depth = new Float64Array(columns * rows).fill(-Infinity);
  const covered = new Int16Array(columns * rows).fill(-1);
  const alone = projections.map((projection, solid) => {
    let count = 0;
    for (const cover of coversOf(projection, solid)) {
      forCells(cover, { size, origin, columns, rows }, (cell, x, y) => {
        if (covered[cell] !== solid) count++;
        covered[cell] = solid;
        const z = depthAt(cover, x, y);
        if (z <= depth[cell]!) return;
        depth[cell] = z;
        seen[cell] = solid;
        faces[cell] = solid * FACES + cover.face;
      });
    }
    return count;
  });
  return { size, origin, columns, rows, seen, faces, depth, alone };
}

const least = (values: readonly number[]): number => values.reduce((a, b) => Math.min(a, b), Infinity);

type Grid = Pick<SeenCells, 'size' | 'origin' | 'columns' | 'rows'>;

/** Every cell whose middle a triangle covers. */
function forCells(cover: Cover, grid: Grid, put: (cell: number, x: Mm, y: Mm) => void): void {
  const { size, origin, columns, rows } = grid;
  const range = (axis: 0 | 1, count: number): readonly [number, number] => {
    const at = cover.corners.map((p) => (p[axis] - origin[axis]) / size - 0.5);
    return [Math.max(0, Math.ceil(Math.min(...at))), Math.min(count - 1, Math.floor(Math.max(...at)))];
  };
  const [p, q, r] = cover.sides;
  const [x0, x1] = range(0, columns);
  const [y0, y1] = range(1, rows);
  for (let row = y0; row <= y1; row++) {
    const y = origin[1] + (row + 0.5) * size;
    for (let column = x0; column <= x1; column++) {
      const x = origin[0] + (column + 0.5) * size;
      const inside = p.a * x + p.b * y + p.c >= 0 && q.a * x + q.b * y + q.c >= 0 && r.a * x + r.b * y + r.c >= 0;
      if (inside) put(row * columns + column, x, y);
    }
  }
}

/** The cell over a point, one near the border, which shows nothing, for a point beyond it. */
export function cellAt({ size, origin, columns, rows }: SeenCells, [x, y]: Vec2 | Vec3): number {
  return within(y - origin[1], size, rows) * columns + within(x - origin[0], size, columns);
}

const within = (value: Mm, size: Mm, count: number): number =>
  Math.min(count - 2, Math.max(1, Math.floor(value / size)));

/** Middle of a cell. */
export const middleOf = ({ size, origin, columns }: SeenCells, cell: number): Vec2 => [
  origin[0] + ((cell % columns) + 0.5) * size,
  origin[1] + (Math.floor(cell / columns) + 0.5) * size,
];

/** Of each solid the share that is seen of what would be seen if it stood alone. */
export function seenShares({ seen, alone }: SeenCells): number[] {
  const counts = alone.map(() => 0);
  for (const solid of seen) if (solid >= 0) counts[solid]!++;
  return counts.map((count, k) => (alone[k]! > 0 ? count / alone[k]! : 0));
}

type Faces = Pick<SeenCells, 'size' | 'columns' | 'rows' | 'faces'>;

/**
 * How far each cell is from the next that shows another face, mm, at most some percent too long: by two sweeps over the
 * cells, each from its neighbors that are done.
 */
export function clearOf({ size, columns, rows, faces }: Faces): Float64Array {
  const far = new Float64Array(columns * rows).fill(Infinity);
  const diagonal = Math.SQRT2 * size;
  const settle = (cell: number, other: number, step: Mm): void => {
    const away = (faces[other] === faces[cell] ? far[other]! : 0) + step;
    if (away < far[cell]!) far[cell] = away;
  };
  const sweep = (cell: number, sign: 1 | -1): void => {
    settle(cell, cell - sign, size);
    settle(cell, cell - sign * columns, size);
    settle(cell, cell - sign * (columns + 1), diagonal);
    settle(cell, cell - sign * (columns - 1), diagonal);
  };
  // Cells at the border show nothing; what is beyond them is not asked.
  for (let y = 1; y < rows - 1; y++) for (let x = 1; x < columns - 1; x++) sweep(y * columns + x, 1);
  for (let y = rows - 2; y > 0; y--) for (let x = columns - 2; x > 0; x--) sweep(y * columns + x, -1);
  return far;
}
