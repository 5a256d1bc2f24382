import { formatInches, formatMm, formatNumber, type Rounding, steps, type UnitSystem } from './format-length.ts';
import { MM_PER_INCH, type Mm } from './mm.ts';

/** Kilograms in a pound, exact by the international yard and pound agreement of 1959. */
export const KG_PER_POUND = 0.45359237;

/** Newtons in a pound of force: a pound under standard gravity, 9.80665 m/s² (3rd CGPM, 1901), both exact. */
export const NEWTON_PER_POUND = KG_PER_POUND * 9.80665;

/** Megapascals in a pound of force a square inch. */
export const MPA_PER_PSI = NEWTON_PER_POUND / MM_PER_INCH ** 2;

/** Newton meters in a pound of force at a foot. */
const NM_PER_POUND_FOOT = (NEWTON_PER_POUND * 12 * MM_PER_INCH) / 1000;

/** From this many on, tenths are noise: our convention. A kilogram is two pounds and a bit, a pound of force four newtons. */
const COARSE = { kg: 10, lb: 20, lbf: 100 } as const;

/** A number of units: whole ones where there are many, tenths below. */
function formatUnits(count: number, rounding: Rounding, unit: keyof typeof COARSE): string {
  const step = Math.abs(count) < COARSE[unit] ? 0.1 : 1;
  return `${formatNumber(steps(count, step, rounding) * step, 1)} ${unit}`;
}

/** A mass in kg, or a load as makers say it: `74 kg`, `163 lb`. */
export const formatMass = (kg: number, system: UnitSystem, rounding: Rounding = 'nearest'): string =>
  system === 'in' ? formatUnits(kg / KG_PER_POUND, rounding, 'lb') : formatUnits(kg, rounding, 'kg');

/** A force in N: `300 N`, `67.4 lbf`. */
export const formatForce = (newton: number, system: UnitSystem, rounding: Rounding = 'nearest'): string =>
  system === 'in'
    ? formatUnits(newton / NEWTON_PER_POUND, rounding, 'lbf')
    : `${formatNumber(steps(newton, 1, rounding), 0)} N`;

/** A stress in MPa: `3.9 MPa`, `560 psi`. */
export const formatStress = (mpa: number, system: UnitSystem, decimals: number): string =>
  system === 'in' ? `${formatNumber(mpa / MPA_PER_PSI, 0)} psi` : `${formatNumber(mpa, decimals)} MPa`;

/** A moment in N m: `56 N m`, `41 lbf ft`. */
export const formatMoment = (newtonMeter: number, system: UnitSystem): string =>
  system === 'in'
    ? `${formatNumber(newtonMeter / NM_PER_POUND_FOOT, 0)} lbf ft`
    : `${formatNumber(newtonMeter, 0)} N m`;

/** Below this a movement is told in thousandths of an inch, 1/16 in: common practice, no source. */
const SMALL: Mm = MM_PER_INCH / 16;

/** Thousandths of an inch: `0.008 in`. */
export const formatThousandths = (mm: Mm, rounding: Rounding = 'nearest', mark: ' in' | '' = ' in'): string =>
  `${formatNumber(steps(mm, MM_PER_INCH / 1000, rounding) / 1000, 3)}${mark}`;

/** How far something moves: tenths of a mm; 64ths of an inch, and thousandths where it is little. */
export function formatMove(mm: Mm, system: UnitSystem, rounding: Rounding = 'nearest'): string {
  if (system === 'mm') return formatMm(mm, 1, rounding);
  return Math.abs(mm) < SMALL ? formatThousandths(mm, rounding) : formatInches(mm, { rounding });
}
