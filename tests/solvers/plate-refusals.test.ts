import { describe, expect, it } from 'vitest';
import { crossStressAt, meanCrossStress } from '../../lib/derive/checks/solvers/plate/cross-stress.ts';
import { deflectionAt } from '../../lib/derive/checks/solvers/plate/field.ts';
import { isHeld } from '../../lib/derive/checks/solvers/plate/held.ts';
import type { Plate, PlateSupport } from '../../lib/derive/checks/solvers/plate/plate.ts';
import { factorPlate, solvePlate } from '../../lib/derive/checks/solvers/plate/solve.ts';
import type { Vec2 } from '../../lib/geometry/vec.ts';
import { CHERRY, demoPlate, lazily, pushed } from './plate-demo.ts';

const plate = demoPlate([12, 8]);
const factored = lazily(() => plate);
const on = (...supports: PlateSupport[]): Plate => ({ ...plate, supports });
const point = (at: Vec2): PlateSupport => ({ from: at, to: at });
const bearer = plate.supports[0]!;

describe('isHeld', () => {
  it('asks for three points that do not lie in one line', () => {
    expect(isHeld(plate)).toBe(true);
    expect(isHeld(on())).toBe(false);
    expect(isHeld(on(bearer))).toBe(false);
    expect(isHeld(on(bearer, point([355.6, 0])))).toBe(false);
    expect(isHeld(on(bearer, point([1778, 508])))).toBe(true);
    expect(isHeld(on(point([0, 0]), point([1066.8, 508]), point([2133.6, 1016])))).toBe(false);
    expect(isHeld(on(point([0, 0]), point([0, 1016]), point([2133.6, 0])))).toBe(true);
  });

  it('lets a held slope stand for a second line', () => {
    expect(isHeld(on({ ...bearer, holds: ['down', 'slope along'] }))).toBe(true);
    expect(isHeld(on({ ...bearer, holds: ['down', 'slope across'] }))).toBe(false);
    expect(isHeld(on({ ...bearer, holds: ['slope along', 'slope across'] }))).toBe(false);
  });
});

describe('factorPlate refuses', () => {
  it('a plate that drops or tilts', () => {
    expect(() => factorPlate(on(bearer))).toThrow('1 supports let the plate drop or tilt');
  });

  it('supports askew or off the grid', () => {
    expect(() => factorPlate(on(bearer, { from: [1778, 127], to: [2133.6, 889] }))).toThrow('lies askew to the grain');
    expect(() => factorPlate(on(bearer, point([1778, 500])))).toThrow('there is no grid line at 500 mm');
  });

  it('thickness and stiffness that cannot be', () => {
    const hollow: Plate = { ...plate, thickness: (x) => (x > 2000 ? Number.NaN : 30) };
    expect(() => factorPlate(hollow)).toThrow(/the thickness at \[20\d\d.*\] is NaN mm; it must be above 0 mm/);
    expect(() => factorPlate({ ...plate, thickness: () => 0 })).toThrow('is 0 mm');
    expect(() => factorPlate({ ...plate, wood: { ...CHERRY, shear: 0 } })).toThrow('shear modulus is 0 MPa');
    expect(() => factorPlate({ ...plate, wood: { ...CHERRY, poisson: 4 } })).toThrow(
      "Poisson's ratio is 4; it must be below 3.4",
    );
  });
});

describe('loads and questions beside the plate', () => {
  it('are refused', () => {
    expect(() => pushed(factored(), [-1, 0])).toThrow('the point [-1, 0] lies beside the plate');
    const over = { from: [0, 0], to: [2200, 10] } as const;
    expect(() => solvePlate(factored(), [{ kind: 'spread', pressure: 1, over }])).toThrow(
      'a load from 0 to 2200 mm does not lie on the plate, 0 to 2133.6 mm',
    );
    expect(() => solvePlate(factored(), [{ kind: 'own weight', density: 0 }])).toThrow('density is 0 kg/m³');
    const field = pushed(factored(), [0, 0]);
    expect(() => deflectionAt(field, [0, 1017])).toThrow('lies beside the plate');
    expect(() => crossStressAt(field, [Number.NaN, 0])).toThrow('lies beside the plate');
    expect(() => meanCrossStress(field, [355.6, 127], 0)).toThrow('length of the mean is 0 mm');
  });
});

describe('meanCrossStress', () => {
  it('is the mean of the part that lies on the plate', () => {
    const field = pushed(factored(), [0, 0]);
    const half = meanCrossStress(field, [50, 127], 100);
    expect(meanCrossStress(field, [0, 127], 200)).toBeCloseTo(half, 12);
    const parts = [25, 75].map((x) => meanCrossStress(field, [x, 127], 50));
    expect((parts[0]! + parts[1]!) / 2).toBeCloseTo(half, 9);
  });
});
