import { describe, expect, it } from 'vitest';
import { type AssembledPlate, assemblePlate } from '../../lib/derive/checks/solvers/plate/assemble.ts';
import { crossStressAt } from '../../lib/derive/checks/solvers/plate/cross-stress.ts';
import { curvatureAt, deflectionAt } from '../../lib/derive/checks/solvers/plate/field.ts';
import { nodeAt } from '../../lib/derive/checks/solvers/plate/mesh.ts';
import type { Plate } from '../../lib/derive/checks/solvers/plate/plate.ts';
import { rigidityOf } from '../../lib/derive/checks/solvers/plate/rigidity.ts';
import { factorPlate, type PlateField } from '../../lib/derive/checks/solvers/plate/solve.ts';
import type { Vec2 } from '../../lib/geometry/vec.ts';
import { CHERRY, evenly, pushed } from './plate-demo.ts';
import { dense, times } from './plate-dense.ts';

const H = 30;
const patch: Plate = {
  grid: { xs: Float64Array.of(0, 130, 210, 400, 580, 600), ys: Float64Array.of(-90, -20, 60, 75, 200) },
  wood: CHERRY,
  thickness: () => H,
  supports: [],
};

/** Deflection and its derivatives as functions of the place. */
interface Shape {
  readonly w: (x: number, y: number) => number;
  readonly along: (x: number, y: number) => number;
  readonly across: (x: number, y: number) => number;
  /** w_xx, w_yy, w_xy. */
  readonly curvature: readonly [number, number, number];
}

const shapes: readonly (readonly [string, Shape])[] = [
  ['a drop', { w: () => 1, along: () => 0, across: () => 0, curvature: [0, 0, 0] }],
  ['a tilt', { w: (x, y) => x - 2 * y, along: () => 1, across: () => -2, curvature: [0, 0, 0] }],
  ['a bend along', { w: (x) => (x * x) / 2, along: (x) => x, across: () => 0, curvature: [1, 0, 0] }],
  ['a bend across', { w: (_, y) => (y * y) / 2, along: () => 0, across: (_, y) => y, curvature: [0, 1, 0] }],
  ['a twist', { w: (x, y) => x * y, along: (_, y) => y, across: (x) => x, curvature: [0, 0, 1] }],
];

function movesOf({ mesh }: AssembledPlate, { w, along, across }: Shape): Float64Array {
  const moves = new Float64Array(3 * mesh.nodes);
  mesh.grid.xs.forEach((x, i) => {
    mesh.grid.ys.forEach((y, j) => {
      moves.set([w(x, y), along(x, y), across(x, y)], 3 * nodeAt(mesh, i, j));
    });
  });
  return moves;
}

describe.each(shapes)('patch test: %s', (_name, shape) => {
  const assembled = assemblePlate(patch);
  const moves = movesOf(assembled, shape);
  const forces = times(dense(assembled.stiffness), moves);
  const field: PlateField = { plate: { ...assembled, factored: true }, moves };

  it('is held by forces on the edges alone', () => {
    const { xs, ys } = patch.grid;
    const scale = Math.max(...dense(assembled.stiffness).map((row) => Math.max(...row.map(Math.abs))));
    const most = scale * Math.max(...moves.map(Math.abs));
    for (let i = 1; i + 1 < xs.length; i++) {
      for (let j = 1; j + 1 < ys.length; j++) {
        const at = 3 * nodeAt(assembled.mesh, i, j);
        for (const force of forces.subarray(at, at + 3)) expect(Math.abs(force) / most).toBeLessThan(1e-13);
      }
    }
  });

  it('stores the energy of the plate theory', () => {
    const { along, across, coupling, twist } = rigidityOf(CHERRY);
    const [xx, yy, xy] = shape.curvature;
    const density = along * xx * xx + 2 * coupling * xx * yy + across * yy * yy + 4 * twist * xy * xy;
    const expected = density * H ** 3 * 600 * 290;
    const energy = moves.reduce((sum, move, k) => sum + move * forces[k]!, 0);
    expect(Math.abs(energy - expected)).toBeLessThan(1e-9 * (rigidityOf(CHERRY).across * H ** 3 * 600 * 290));
  });

  it('shows its deflection, curvature and stress at every place', () => {
    const { across, coupling } = rigidityOf(CHERRY);
    const [xx, yy, xy] = shape.curvature;
    const places: Vec2[] = [
      [0, -90],
      [130, 60],
      [333, 60],
      [210, 10],
      [599, 199],
      [300, 100],
    ];
    for (const at of places) {
      expect(deflectionAt(field, at)).toBeCloseTo(shape.w(...at), 6);
      const c = curvatureAt(field, at);
      expect(c.along).toBeCloseTo(xx, 9);
      expect(c.across).toBeCloseTo(yy, 9);
      expect(c.twist).toBeCloseTo(xy, 9);
      expect(crossStressAt(field, at)).toBeCloseTo(6 * H * Math.abs(coupling * xx + across * yy), 4);
    }
  });
});

describe('a plate held at three corners and pushed on the fourth', () => {
  it('twists evenly: w = P x y / 4 D_k', () => {
    const corners: Vec2[] = [
      [0, 0],
      [900, 0],
      [0, 500],
    ];
    const plate = factorPlate({
      grid: { xs: evenly(900, 7), ys: evenly(500, 9) },
      wood: CHERRY,
      thickness: () => H,
      supports: corners.map((at) => ({ from: at, to: at })),
    });
    const field = pushed(plate, [900, 500], 80);
    const twist = 80 / (4 * rigidityOf(CHERRY).twist * H ** 3);
    for (const [x, y] of [
      [900, 500],
      [450, 250],
      [100, 480],
      [777, 33],
    ] as const) {
      expect(deflectionAt(field, [x, y])).toBeCloseTo(twist * x * y, 8);
      expect(curvatureAt(field, [x, y]).twist / twist).toBeCloseTo(1, 8);
    }
    expect(crossStressAt(field, [400, 250])).toBeCloseTo(0, 8);
  });
});
