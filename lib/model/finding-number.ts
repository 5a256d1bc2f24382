import { formatInches, formatMm, formatNumber, type UnitSystem } from '../units/format-length.ts';
import type { Finding } from './finding.ts';

/** Prints the numbers of findings of one kind, all in the same unit. */
export interface NumberLook {
  /** What stands behind the number, or is meant by it: `in`, `mm`, `%`, `kg`. */
  readonly unit: string;
  /** The number alone. */
  readonly bare: (value: number) => string;
  /** `6 mm`, `1/4 in`, `91 %`. */
  readonly say: (value: number) => string;
}

const SIXTY_FOURTH = 25.4 / 64;

/**
 * How the numbers of a kind of finding are printed. Lengths are in the units of the papers, but for those whose limit was
 * set in millimeters (how far something gives is told in tenths of a mm in an inch shop, too); shares in percent.
 */
export function numberLook(unit: string, limits: readonly number[], units: UnitSystem): NumberLook {
  if (unit === 'mm') return units === 'in' && limits.every(isInches) ? INCHES : MILLIMETERS;
  if (unit.startsWith('of ')) return look('%', (value) => formatNumber(value * 100, Math.abs(value) < 1 ? 1 : 0));
  return look(unit, (value) => formatNumber(value, Math.abs(value) < 10 ? 2 : Math.abs(value) < 100 ? 1 : 0));
}

const look = (unit: string, bare: NumberLook['bare']): NumberLook => ({
  unit,
  bare,
  say: (value) => `${bare(value)} ${unit}`.trim(),
});

const INCHES = look('in', (value) => formatInches(value, { mark: '' }));
const MILLIMETERS = look('mm', (value) => formatMm(value, Math.abs(value) < 1 ? 2 : 1, 'nearest', ''));

/** Whether a limit is a whole number of 64ths. */
const isInches = (limit: number): boolean => Math.abs(limit / SIXTY_FOURTH - Math.round(limit / SIXTY_FOURTH)) < 1e-6;

/** Value and limit of one finding as text; empty for what it does not have. */
export function findingNumbers(
  { value, limit, unit, range }: Finding,
  units: UnitSystem,
): { readonly value: string; readonly limit: string; readonly range: string } {
  const { say } = numberLook(unit, limit === undefined ? [] : [limit], units);
  return {
    value: value === undefined ? '' : say(value),
    limit: limit === undefined ? '' : say(limit),
    range: range ? `${say(range[0])} to ${say(range[1])}` : '',
  };
}
