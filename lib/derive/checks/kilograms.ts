import { formatNumber, type Rounding, steps } from '../../units/format-length.ts';

/** From this mass on, tenths of a kilogram are noise, kg. */
const COARSE = 10;

/** A mass, or a load as makers say it: whole kilograms from 10 kg on, tenths below. */
export function sayKg(kg: number, rounding: Rounding = 'nearest'): string {
  const step = Math.abs(kg) < COARSE ? 0.1 : 1;
  return `${formatNumber(steps(kg, step, rounding) * step, 1)} kg`;
}
