import type { Plate, PlateSupport, PlateWood } from '../../lib/derive/checks/solvers/plate/plate.ts';
import { rigidityOf } from '../../lib/derive/checks/solvers/plate/rigidity.ts';
import { evenly } from './plate-demo.ts';

export interface SupportedPlate {
  /** mm. */
  readonly a: number;
  readonly b: number;
  readonly h: number;
  readonly wood: PlateWood;
}

/**
 * Deflection in the middle of an orthotropic rectangle, simply supported all round, by Navier's double series over odd
 * m, n: even pressure in MPa and force in N in the middle.
 */
export function navierMiddle({ a, b, h, wood }: SupportedPlate, load: { pressure: number; force: number }): number {
  const d = rigidityOf(wood);
  let sum = 0;
  for (let m = 1; m < 400; m += 2) {
    for (let n = 1; n < 400; n += 2) {
      const [p, q] = [(m * Math.PI) / a, (n * Math.PI) / b];
      const stiffness =
        h ** 3 * (d.along * p ** 4 + 2 * (d.coupling + 2 * d.twist) * p * p * q * q + d.across * q ** 4);
      const sign = (m + n) % 4 === 2 ? 1 : -1;
      const pressed = (sign * 16 * load.pressure) / (Math.PI ** 2 * m * n);
      sum += (pressed + (4 * load.force) / (a * b)) / stiffness;
    }
  }
  return sum;
}

/** The same for the solver: down and the slope along each edge are held. */
export function supportedPlate({ a, b, h, wood }: SupportedPlate, along: number, across: number): Plate {
  const edge = (from: readonly [number, number], to: readonly [number, number]): PlateSupport => ({
    from,
    to,
    holds: ['down', from[0] === to[0] ? 'slope across' : 'slope along'],
  });
  return {
    grid: { xs: evenly(a, along), ys: evenly(b, across) },
    wood,
    thickness: () => h,
    supports: [edge([0, 0], [0, b]), edge([a, 0], [a, b]), edge([0, 0], [a, 0]), edge([0, b], [a, b])],
  };
}
