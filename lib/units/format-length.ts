import type { Mm } from './mm.ts';

/** What a printed length may do to the true one: a needed thickness goes up, a cover goes down. */
export type Rounding = 'nearest' | 'up' | 'down';

/** The finest fraction of an inch that is printed. */
export type Denominator = 1 | 2 | 4 | 8 | 16 | 32 | 64;

export interface InchStyle {
  /** Finest fraction; default 64 (fits), 32 for parts and 16 for lumber are the shop habit (common practice, no source). */
  readonly denominator?: Denominator;
  readonly rounding?: Rounding;
  /** What follows the number: ` in` in text, `"` on drawings, nothing under a column head that names the unit. */
  readonly mark?: ' in' | '"' | '';
}

/** A step is not rounded away from a value that is only off by floating-point noise: one part in a million of a step. */
const NOISE = 1e-6;

/** Steps of `step` in `value`, rounded in the stated direction; noise below a millionth of a step does not count. */
export function steps(value: number, step: number, rounding: Rounding = 'nearest'): number {
  const exact = value / step;
  if (!Number.isFinite(exact)) throw new RangeError(`cannot print ${value} as a number`);
  const near = Math.round(exact);
  if (rounding === 'nearest' || Math.abs(exact - near) < NOISE) return near;
  return rounding === 'up' ? Math.ceil(exact) : Math.floor(exact);
}

/** Inches as a whole number and a fraction in lowest terms: `2 1/4 in`, `9/16 in`, `0 in`. Reads back exactly. */
export function formatInches(mm: Mm, style: InchStyle = {}): string {
  const { denominator = 64, rounding = 'nearest', mark = ' in' } = style;
  const count = steps(mm, 25.4 / denominator, rounding);
  const size = Math.abs(count);
  const whole = Math.floor(size / denominator);
  let top = size % denominator;
  let bottom: number = denominator;
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  const fraction = top > 0 ? `${top}/${bottom}` : '';
  const number = whole > 0 && fraction ? `${whole} ${fraction}` : fraction || `${whole}`;
  return `${count < 0 ? '-' : ''}${number}${mark}`;
}

/** Millimetres with at most `decimals` places, no trailing zeros, never `-0`: `57.2 mm`. */
export function formatMm(mm: Mm, decimals = 1, rounding: Rounding = 'nearest', mark: ' mm' | '' = ' mm'): string {
  return `${formatNumber(steps(mm, 10 ** -decimals, rounding) / 10 ** decimals, decimals)}${mark}`;
}

/** The one printer of plain numbers: fixed point, at most `decimals` places, no exponent, no trailing zeros, no `-0`. */
export function formatNumber(value: number, decimals = 3): string {
  if (!Number.isFinite(value)) throw new RangeError(`cannot print ${value} as a number`);
  if (Math.abs(value) >= 1e21) return BigInt(value).toString();
  const text = value.toFixed(decimals);
  const short = text.includes('.') ? text.replace(/\.?0+$/, '') : text;
  return short === '-0' ? '0' : short;
}

/** Which system the papers speak. */
export type UnitSystem = 'in' | 'mm';

/** A length in the asked system, in the one printed form. */
export function formatLength(
  mm: Mm,
  system: UnitSystem,
  rounding: Rounding = 'nearest',
  denominator: Denominator = 64,
): string {
  return system === 'in' ? formatInches(mm, { denominator, rounding }) : formatMm(mm, 1, rounding);
}
