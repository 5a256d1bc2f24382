import { formatInches, formatMm, formatNumber, type UnitSystem } from '../units/format-length.ts';
import type { Mm } from '../units/mm.ts';

/** A row of the buying list; what is left out stays empty. */
export interface Cells {
  readonly row: string;
  readonly lumber?: string | undefined;
  readonly parts?: string;
  readonly pieces?: number;
  readonly from?: string;
  readonly size?: readonly [string, string, string];
  readonly feet?: string;
  readonly yield?: string;
  readonly addOn?: string;
  readonly price?: string;
  readonly remarks: string;
}

export const cellsOf = (c: Cells): string[] => [
  c.row,
  c.lumber ?? '',
  c.parts ?? '',
  c.pieces === undefined ? '' : `${c.pieces}`,
  c.from ?? '',
  ...(c.size ?? ['', '', '']),
  c.feet ?? '',
  c.yield ?? '',
  c.addOn ?? '',
  c.price ?? '',
  c.remarks,
];

/** A size to look for: up to the next 1/16 in or mm, as lumber is measured. */
export const rough = (mm: Mm, units: UnitSystem): string =>
  units === 'in' ? formatInches(mm, { denominator: 16, rounding: 'up', mark: '' }) : formatMm(mm, 0, 'up', '');

/** A place across the top, to the side that errs toward thicker wood. */
export const place = (mm: Mm, units: UnitSystem): string =>
  units === 'in' ? formatInches(mm, { rounding: 'up', mark: '' }) : formatMm(mm, 1, 'up', '');

/** Board feet, or their sum as it is printed line by line. */
export const feet = (...values: readonly number[]): string =>
  formatNumber(
    values.reduce((all, value) => all + Number(formatNumber(value, 1)), 0),
    1,
  );

/** Money in whole units, rounded up; of several amounts the sum as it is printed line by line. */
export const money = (...values: readonly number[]): string =>
  formatNumber(
    values.reduce((all, value) => all + Math.ceil(value - 1e-9), 0),
    0,
  );
