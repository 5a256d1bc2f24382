import type { Vec2 } from '../../../../geometry/vec.ts';
import type { Mm } from '../../../../units/mm.ts';
import { type PlateGrid, SAME_LINE } from './grid.ts';

/** A point as an element sees it. */
export interface Spot {
  readonly column: number;
  readonly row: number;
  /** On the square from -1 to 1. */
  readonly xi: number;
  readonly eta: number;
  /** Half the size of the element. */
  readonly halfX: Mm;
  readonly halfY: Mm;
}

export function spotIn({ xs, ys }: PlateGrid, column: number, row: number, x: Mm, y: Mm): Spot {
  const halfX = (xs[column + 1]! - xs[column]!) / 2;
  const halfY = (ys[row + 1]! - ys[row]!) / 2;
  return { column, row, xi: (x - xs[column]!) / halfX - 1, eta: (y - ys[row]!) / halfY - 1, halfX, halfY };
}

/** An element that a point lies in. @throws RangeError when it lies beside the plate. */
export const elementAt = (grid: PlateGrid, at: Vec2): Spot => elementsAt(grid, at)[0]!;

/** All elements that a point lies in: one, two beside a grid line, four around a node. */
export function elementsAt(grid: PlateGrid, at: Vec2): Spot[] {
  const rows = gapsAt(grid.ys, at[1], at);
  return gapsAt(grid.xs, at[0], at).flatMap((i) => rows.map((j) => spotIn(grid, i, j, at[0], at[1])));
}

/** The gaps between lines that a coordinate lies in; a line that it nearly lies on belongs to both sides. */
function gapsAt(lines: Float64Array, at: Mm, point: Vec2): number[] {
  const gaps: number[] = [];
  for (let k = 0; k + 1 < lines.length; k++) {
    if (at >= lines[k]! - SAME_LINE && at <= lines[k + 1]! + SAME_LINE) gaps.push(k);
  }
  if (gaps.length === 0) throw new RangeError(`the point [${point.join(', ')}] lies beside the plate`);
  return gaps;
}
