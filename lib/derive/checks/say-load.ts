import type { Rounding } from '../../units/format-length.ts';
import { formatForce, formatMass, formatMoment, formatStress } from '../../units/format-load.ts';
import type { CheckContext } from './check.ts';

type Speaks = Pick<CheckContext, 'units'>;

/** A mass in kg for a sentence, rounded to the side that does not flatter. */
export const sayMass = ({ units }: Speaks, kg: number, rounding?: Rounding): string => formatMass(kg, units, rounding);

/** A force in N for a sentence. */
export const sayForce = ({ units }: Speaks, newton: number, rounding?: Rounding): string =>
  formatForce(newton, units, rounding);

/** A stress in MPa for a sentence. */
export const sayStress = ({ units }: Speaks, mpa: number, decimals = 2): string => formatStress(mpa, units, decimals);

/** A moment in N m for a sentence. */
export const sayMoment = ({ units }: Speaks, newtonMeter: number): string => formatMoment(newtonMeter, units);

/** A mass as its source gives it, in kg, after what an inch shop reads. */
export const sayPublishedMass = ({ units }: Speaks, kg: number): string =>
  units === 'in' ? `${formatMass(kg, 'in')} (${kg} kg)` : `${kg} kg`;
