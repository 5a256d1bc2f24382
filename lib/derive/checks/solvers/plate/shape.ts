import type { Mesh } from './mesh.ts';

/** Number of ways in which the four corners of an element move. */
export const ELEMENT_WAYS = 12;

/** How much each way of the corners (down, slope along, slope across; each for one unit on the square from -1 to 1) counts. */
export interface Shapes {
  readonly down: Float64Array;
  /** Second derivatives on the square. */
  readonly along: Float64Array;
  readonly across: Float64Array;
  readonly twist: Float64Array;
}

export const emptyShapes = (): Shapes => ({
  down: new Float64Array(ELEMENT_WAYS),
  along: new Float64Array(ELEMENT_WAYS),
  across: new Float64Array(ELEMENT_WAYS),
  twist: new Float64Array(ELEMENT_WAYS),
});

/**
 * The rectangle with 12 ways to move: a full cubic and the terms x³y and xy³ (Adini, Clough and Melosh; written down from
 * memory, confirmed by the tests of constant curvature and twist). Deflection is continuous from one element to the next,
 * slope across their common side only at the corners.
 */
export function shapesAt({ corners }: Pick<Mesh, 'corners'>, xi: number, eta: number, into: Shapes): Shapes {
  const { down, along, across, twist } = into;
  corners.forEach(([cx, cy], c) => {
    const x = xi * cx;
    const y = eta * cy;
    const k = 3 * c;
    down[k] = ((1 + x) * (1 + y) * (2 + x + y - x * x - y * y)) / 8;
    along[k] = -0.75 * x * (1 + y);
    across[k] = -0.75 * y * (1 + x);
    twist[k] = (cx * cy * (4 - 3 * x * x - 3 * y * y)) / 8;
    down[k + 1] = (cx * (1 + x) * (1 + x) * (x - 1) * (1 + y)) / 8;
    along[k + 1] = (cx * (6 * x + 2) * (1 + y)) / 8;
    across[k + 1] = 0;
    twist[k + 1] = (cy * (3 * x * x + 2 * x - 1)) / 8;
    down[k + 2] = (cy * (1 + y) * (1 + y) * (y - 1) * (1 + x)) / 8;
    along[k + 2] = 0;
    across[k + 2] = (cy * (6 * y + 2) * (1 + x)) / 8;
    twist[k + 2] = (cx * (3 * y * y + 2 * y - 1)) / 8;
  });
  return into;
}

/** What turns a way of a corner into units on the square: slopes are taken over half the size of the element. */
export const wayScale = (way: number, halfX: number, halfY: number): number => {
  if (way % 3 === 0) return 1;
  return way % 3 === 1 ? halfX : halfY;
};
