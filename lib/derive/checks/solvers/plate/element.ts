import { GAUSS_3 } from '../gauss.ts';
import type { Mesh } from './mesh.ts';
import type { Rigidity } from './rigidity.ts';
import { ELEMENT_WAYS, emptyShapes, type Shapes, shapesAt, wayScale } from './shape.ts';

/** A point inside an element at which its thickness is taken. */
export interface ElementPoint {
  /** On the square from -1 to 1. */
  readonly xi: number;
  readonly eta: number;
  readonly weight: number;
  readonly shapes: Shapes;
}

/** Points in an element: 3 × 3. */
export const POINTS = 9;

/** Entries on and below the diagonal of the stiffness of an element. */
export const LOWER = (ELEMENT_WAYS * (ELEMENT_WAYS + 1)) / 2;

export function elementPoints(mesh: Mesh): ElementPoint[] {
  const { points, weights } = GAUSS_3;
  return points.flatMap((xi, i) =>
    points.map((eta, j) => ({
      xi,
      eta,
      weight: weights[i]! * weights[j]!,
      shapes: shapesAt(mesh, xi, eta, emptyShapes()),
    })),
  );
}

/**
 * Stiffness of all elements of one size over the cubes of their thickness: for each entry on and below the diagonal, row
 * by row, what each of the nine points adds. Fills `into`, of `LOWER` × `POINTS`.
 */
export function unitStiffness(
  points: readonly ElementPoint[],
  rigidity: Rigidity,
  halfX: number,
  halfY: number,
  into: Float64Array,
): void {
  const along = (rigidity.along * halfY) / halfX ** 3;
  const across = (rigidity.across * halfX) / halfY ** 3;
  const coupling = rigidity.coupling / (halfX * halfY);
  const twist = (4 * rigidity.twist) / (halfX * halfY);
  points.forEach(({ weight, shapes: s }, p) => {
    let entry = p;
    for (let i = 0; i < ELEMENT_WAYS; i++) {
      const rowScale = weight * wayScale(i, halfX, halfY);
      const ofAlong = along * s.along[i]! + coupling * s.across[i]!;
      const ofAcross = across * s.across[i]! + coupling * s.along[i]!;
      const ofTwist = twist * s.twist[i]!;
      for (let j = 0; j <= i; j++) {
        const sum = ofAlong * s.along[j]! + ofAcross * s.across[j]! + ofTwist * s.twist[j]!;
        into[entry] = rowScale * wayScale(j, halfX, halfY) * sum;
        entry += POINTS;
      }
    }
  });
}

/** Stiffness of one element from that of its size and the cubes of its thickness; entries on and below the diagonal. */
export function weigh(unit: Float64Array, cubes: Float64Array, into: Float64Array): void {
  const c0 = cubes[0]!;
  const c1 = cubes[1]!;
  const c2 = cubes[2]!;
  const c3 = cubes[3]!;
  const c4 = cubes[4]!;
  const c5 = cubes[5]!;
  const c6 = cubes[6]!;
  const c7 = cubes[7]!;
  const c8 = cubes[8]!;
  for (let k = 0, u = 0; k < LOWER; k++, u += POINTS) {
    into[k] =
      c0 * unit[u]! +
      c1 * unit[u + 1]! +
      c2 * unit[u + 2]! +
      c3 * unit[u + 3]! +
      c4 * unit[u + 4]! +
      c5 * unit[u + 5]! +
      c6 * unit[u + 6]! +
      c7 * unit[u + 7]! +
      c8 * unit[u + 8]!;
  }
}
