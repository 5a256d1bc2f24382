import { deflectionAt } from '../../lib/derive/checks/solvers/plate/field.ts';
import { gridLines } from '../../lib/derive/checks/solvers/plate/grid.ts';
import type { Plate, PlateLoad, PlateSupport, PlateWood } from '../../lib/derive/checks/solvers/plate/plate.ts';
import {
  type FactoredPlate,
  factorPlate,
  type PlateField,
  solvePlate,
} from '../../lib/derive/checks/solvers/plate/solve.ts';
import type { Vec2 } from '../../lib/geometry/vec.ts';

// A cherry top, 2133.6 x 1016 mm, 57.15 mm thick on the center line and 28.575 at the long edges, on two bearers 762 mm
// long, 355.6 mm from its ends. y from one long edge.
export const LENGTH = 2133.6;
export const WIDTH = 1016;
export const BEARERS: readonly PlateSupport[] = [355.6, 1778].map((x) => ({ from: [x, 127], to: [x, 889] }));
export const CHERRY: PlateWood = { along: 10_300, across: 885.8, shear: 999.1, poisson: 0.428 };
export const QUARTER_SAWN: PlateWood = { along: 10_300, across: 2029.1, shear: 1514.1, poisson: 0.428 };

export const wedge =
  (edge: number) =>
  (_x: number, y: number): number =>
    57.15 - (57.15 - edge) * Math.abs(y / 508 - 1);

export type Mesh = readonly [along: number, across: number];

export function demoPlate([along, across]: Mesh, edge = 28.575, wood = CHERRY): Plate {
  const grid = {
    xs: gridLines({ from: 0, to: LENGTH, through: [355.6, 1778], count: along }),
    ys: gridLines({ from: 0, to: WIDTH, through: [127, 508, 889], count: across }),
  };
  return { grid, wood, thickness: wedge(edge), supports: BEARERS };
}

/** Each is factored once a test file. */
export function lazily(plate: () => Plate): () => FactoredPlate {
  let factored: FactoredPlate | undefined;
  return () => {
    factored ??= factorPlate(plate());
    return factored;
  };
}

export const PLACES = {
  center: [1066.8, 508],
  midLongEdge: [1066.8, 0],
  corner: [0, 0],
  edgeOverBearer: [355.6, 0],
  midShortEnd: [0, 508],
} as const satisfies Readonly<Record<string, Vec2>>;

export const pushed = (plate: FactoredPlate, at: Vec2, force = 1000): PlateField =>
  solvePlate(plate, [{ kind: 'point', at, force }]);

/** Deflection right under a force of 1 kN. */
export const give = (plate: FactoredPlate, at: Vec2): number => deflectionAt(pushed(plate, at), at);

export const under = (plate: FactoredPlate, load: PlateLoad, at: Vec2): number =>
  deflectionAt(solvePlate(plate, [load]), at);

/** A plate that is alike in all directions. */
export const isotropic = (e: number, poisson: number): PlateWood => ({
  along: e,
  across: e,
  shear: e / (2 * (1 + poisson)),
  poisson,
});

/** Evenly spaced lines from 0. */
export const evenly = (to: number, count: number): Float64Array => gridLines({ from: 0, to, through: [], count });
