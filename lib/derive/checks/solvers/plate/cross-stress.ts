import type { Vec2 } from '../../../../geometry/vec.ts';
import type { Mm } from '../../../../units/mm.ts';
import { positive } from '../../../../wood/in-range.ts';
import { type Figure, ours } from '../ours.ts';
import { curvatureAt } from './field.ts';
import { SAME_LINE } from './grid.ts';
import type { PlateField } from './solve.ts';

/**
 * Length along the grain over which the stress at a bearer end is averaged. The end is a singular point: the finer the
 * grid, the higher its stress, without bound; the mean settles.
 */
export const MEAN_LENGTH: Figure<Mm> = ours(200, 'our convention');

/**
 * Stress in MPa across the grain in the faces of the plate, pulling in one of them: 6 |D_1 w_xx + D_y w_yy| / h². Never
 * judge the value right at the end of a support: take `meanCrossStress` there.
 */
export function crossStressAt(field: PlateField, at: Vec2): number {
  const { plate, rigidity } = field.plate;
  const { along, across } = curvatureAt(field, at);
  return 6 * plate.thickness(at[0], at[1]) * Math.abs(rigidity.coupling * along + rigidity.across * across);
}

/**
 * Mean of the stress across the grain over a length along the grain, its middle at a point; of a length that sticks out
 * of the plate, the part on it counts.
 *
 * ```
 *   ────────── edge ──────────
 *        ├──── mean ────┤         along the grain
 *               ║
 *               ║ bearer
 * ```
 */
export function meanCrossStress(field: PlateField, at: Vec2, over: Mm = MEAN_LENGTH.value): number {
  positive('length of the mean', over, ' mm');
  const { xs } = field.plate.mesh.grid;
  const from = Math.max(at[0] - over / 2, xs[0]!);
  const to = Math.min(at[0] + over / 2, xs.at(-1)!);
  const inner = xs.filter((x) => x > from + SAME_LINE && x < to - SAME_LINE);
  const stops = [from, ...inner, to];
  const stress = stops.map((x) => crossStressAt(field, [x, at[1]]));
  let sum = 0;
  for (let k = 0; k + 1 < stops.length; k++) sum += ((stress[k]! + stress[k + 1]!) / 2) * (stops[k + 1]! - stops[k]!);
  return sum / (to - from);
}
