import { describe, expect, it } from 'vitest';
import { assemblePlate } from '../../lib/derive/checks/solvers/plate/assemble.ts';
import { blockBand, placeOf } from '../../lib/derive/checks/solvers/plate/band.ts';
import { factorBand } from '../../lib/derive/checks/solvers/plate/band-factor.ts';
import { solveBand } from '../../lib/derive/checks/solvers/plate/band-solve.ts';
import { gridLines } from '../../lib/derive/checks/solvers/plate/grid.ts';
import { nodeLoads } from '../../lib/derive/checks/solvers/plate/loads.ts';
import type { Plate, PlateLoad } from '../../lib/derive/checks/solvers/plate/plate.ts';
import { factorPlate, solvePlate } from '../../lib/derive/checks/solvers/plate/solve.ts';
import { BEARERS, CHERRY, demoPlate, wedge } from './plate-demo.ts';
import { dense, solveDense, times } from './plate-dense.ts';

const LOADS: PlateLoad[] = [
  { kind: 'point', at: [37, 1001], force: 1000 },
  { kind: 'point', at: [1500, 333], force: -250 },
  { kind: 'spread', pressure: 1e-4, over: { from: [100, 100], to: [901, 455] } },
  { kind: 'own weight', density: 560 },
];

/** Long, and turned: more lines across than along. */
const turned: Plate = {
  grid: {
    xs: gridLines({ from: 0, to: 2133.6, through: [355.6, 1778], count: 6 }),
    ys: gridLines({ from: 0, to: 1016, through: [127, 508, 889], count: 12 }),
  },
  wood: CHERRY,
  thickness: wedge(20),
  supports: BEARERS,
};

describe.each([
  ['along', demoPlate([12, 6])],
  ['across', turned],
])('the banded solver, longer %s', (_name, plate) => {
  it('agrees with Gauss on the written-out matrix', () => {
    const assembled = assemblePlate(plate);
    const matrix = dense(assembled.stiffness);
    const expected = solveDense(matrix, nodeLoads(assembled, LOADS));
    const { moves } = solvePlate(factorPlate(plate), LOADS);
    const most = Math.max(...expected.map(Math.abs));
    moves.forEach((move, k) => {
      expect(Math.abs(move - expected[k]!)).toBeLessThan(1e-9 * most);
    });
    for (const way of assembled.held) expect(moves[way]).toBe(0);
  });

  it('adds up: the supports carry what the loads press', () => {
    const free = assemblePlate({ ...plate, supports: [] });
    const { moves, plate: factored } = solvePlate(factorPlate(plate), LOADS);
    const forces = times(dense(free.stiffness), moves);
    const loads = nodeLoads(free, LOADS);
    const carried = [...factored.held].reduce((sum, way) => sum + loads[way]! - forces[way]!, 0);
    const section = ((57.15 + plate.thickness(0, 0)) / 2) * 1016;
    const total = 1000 - 250 + 1e-4 * 801 * 355 + section * 2133.6 * 560e-9 * 9.81;
    expect(carried / total).toBeCloseTo(1, 9);
  });
});

describe('factorBand', () => {
  it('refuses a matrix that is not positive definite and names the node', () => {
    const band = blockBand(2, 1);
    for (let p = 0; p < 2; p++) for (let k = 0; k < 3; k++) band.values[placeOf(band, p, p, k) + k] = 1;
    band.values[placeOf(band, 1, 0)] = 2;
    expect(() => factorBand(band)).toThrow('node 1 has a pivot of -3; it must be above 0');
  });

  it('leaves no load without an answer and no answer without a load', () => {
    const plate = factorPlate(demoPlate([12, 6]));
    const nothing = new Float64Array(3 * plate.mesh.nodes);
    solveBand(plate.stiffness, nothing);
    expect(nothing.every((move) => move === 0)).toBe(true);
  });
});
