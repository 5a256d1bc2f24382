import { formatInches, formatMm, formatNumber, type UnitSystem } from '../units/format-length.ts';
import { formatThousandths, KG_PER_POUND, MPA_PER_PSI, NEWTON_PER_POUND } from '../units/format-load.ts';
import { MM_PER_INCH } from '../units/mm.ts';
import type { Finding } from './finding.ts';

/** Prints the numbers of findings of one kind, all in the same unit. */
export interface NumberLook {
  /** What stands behind the number, or is meant by it: `in`, `mm`, `%`, `kg`. */
  readonly unit: string;
  /** How many of the unit of the finding make one that is printed: 25.4 where mm are printed as inches, else mostly 1. */
  readonly size: number;
  /** Whether the number is printed as a whole and a fraction, as on a rule. */
  readonly fractions: boolean;
  /** The number alone. */
  readonly bare: (value: number) => string;
  /** `6 mm`, `1/4 in`, `91 %`. */
  readonly say: (value: number) => string;
}

const SIXTY_FOURTH = MM_PER_INCH / 64;

/** What an inch shop reads for the units of findings. */
const CUSTOMARY: Readonly<Record<string, readonly [unit: string, size: number]>> = {
  kg: ['lb', KG_PER_POUND],
  N: ['lbf', NEWTON_PER_POUND],
  MPa: ['psi', MPA_PER_PSI],
};

/**
 * How the numbers of a kind of finding are printed, in the units of the papers. In inches, lengths are fractions but for those
 * whose limit is none (how far something gives): they are in thousandths. Shares are in percent.
 */
export function numberLook(unit: string, limits: readonly number[], units: UnitSystem): NumberLook {
  if (unit === 'mm') return units === 'mm' ? MILLIMETERS : limits.every(isInches) ? INCHES : THOUSANDTHS;
  if (unit.startsWith('of ')) return look('%', (value) => formatNumber(value * 100, Math.abs(value) < 1 ? 1 : 0));
  const [printed, size] = (units === 'in' ? CUSTOMARY[unit] : undefined) ?? [unit, 1];
  return look(printed, (value) => plainNumber(value / size), size);
}

/** Three digits or so. */
const plainNumber = (value: number): string =>
  formatNumber(value, Math.abs(value) < 10 ? 2 : Math.abs(value) < 100 ? 1 : 0);

/** A look in decimals, as its numbers are printed. */
export const look = (unit: string, bare: NumberLook['bare'], size = 1, fractions = false): NumberLook => ({
  unit,
  size,
  fractions,
  bare,
  say: (value) => `${bare(value)} ${unit}`.trim(),
});

const INCHES = look('in', (value) => formatInches(value, { mark: '' }), MM_PER_INCH, true);
const THOUSANDTHS = look('in', (value) => formatThousandths(value, 'nearest', ''), MM_PER_INCH);
const MILLIMETERS = look('mm', (value) => formatMm(value, Math.abs(value) < 1 ? 2 : 1, 'nearest', ''));

/** Masses of a whole piece, in tenths. */
export function massLook(units: UnitSystem): NumberLook {
  const { unit, size } = numberLook('kg', [], units);
  return look(unit, (value) => formatNumber(value / size, 1), size);
}

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
