import type { PlateGrid } from './grid.ts';

/**
 * How the nodes of a grid are numbered: along the direction with fewer lines, so that the nodes of an element have near
 * numbers and the band of the stiffness is narrow.
 *
 * ```
 *   2   5   8  11
 *   1   4   7  10
 *   0   3   6   9
 * ```
 */
export interface Mesh {
  readonly grid: PlateGrid;
  readonly nodes: number;
  /** From a node to the next one along x, and along y. */
  readonly stepX: number;
  readonly stepY: number;
  /** Greatest difference between two nodes of one element. */
  readonly reach: number;
  /** Corners of an element in the order of their numbers, on the square from -1 to 1. */
  readonly corners: readonly (readonly [xi: number, eta: number])[];
}

export function meshOf(grid: PlateGrid): Mesh {
  const { xs, ys } = grid;
  const across = ys.length <= xs.length;
  const [stepX, stepY] = across ? [ys.length, 1] : [1, xs.length];
  const [low, high] = across
    ? ([
        [-1, 1],
        [1, -1],
      ] as const)
    : ([
        [1, -1],
        [-1, 1],
      ] as const);
  return {
    grid,
    nodes: xs.length * ys.length,
    stepX,
    stepY,
    reach: stepX + stepY,
    corners: [[-1, -1], low, high, [1, 1]],
  };
}

export const nodeAt = ({ stepX, stepY }: Mesh, column: number, row: number): number => column * stepX + row * stepY;

/** The four nodes of an element in the order of `corners`. */
export function nodesOf(mesh: Mesh, column: number, row: number, into: Int32Array): void {
  const first = nodeAt(mesh, column, row);
  into[0] = first;
  into[1] = first + Math.min(mesh.stepX, mesh.stepY);
  into[2] = first + Math.max(mesh.stepX, mesh.stepY);
  into[3] = first + mesh.reach;
}
