import { formatNumber } from '../../units/format-length.ts';

/** One group of a DXF file: a code that says what it is, and the value. */
export type Tag = readonly [code: number, value: string | number];

/** At most eight decimals: a hundred-thousandth of a micrometre. */
const DECIMALS = 8;

/** The largest number written: beyond it the digits of a double do not reach eight decimals. */
const LARGEST = 1e7;

/** Group codes that hold real numbers, from the DXF reference of R2000. */
const isReal = (code: number): boolean =>
  (code >= 10 && code <= 59) || (code >= 140 && code <= 149) || (code >= 210 && code <= 239);

function real(value: number): string {
  if (!(Math.abs(value) <= LARGEST))
    throw new RangeError(`${value} is too large for a DXF file; ${LARGEST} is the most`);
  const text = formatNumber(value, DECIMALS);
  return text.includes('.') ? text : `${text}.0`;
}

function whole(code: number, value: number): string {
  if (!Number.isInteger(value)) throw new RangeError(`DXF group ${code} holds a whole number, not ${value}`);
  return `${value}`;
}

function printable(code: number, value: string): string {
  if (/[^ -~]/.test(value))
    throw new RangeError(`DXF group ${code} holds plain characters only, not ${JSON.stringify(value)}`);
  return value;
}

/** The two lines of each group, with the line ends of the format. */
export function printTags(tags: readonly Tag[]): string {
  return tags
    .map(([code, value]) => {
      const text = typeof value === 'string' ? printable(code, value) : isReal(code) ? real(value) : whole(code, value);
      return `${`${code}`.padStart(3)}\r\n${text}\r\n`;
    })
    .join('');
}

/** A point in the plane: `code`, `code + 10` and, for height 0, `code + 20`. */
export const point = (code: number, [x, y]: readonly [number, number]): readonly Tag[] => [
  [code, x],
  [code + 10, y],
  [code + 20, 0],
];

/** A point of which the format stores no height. */
export const flatPoint = (code: number, [x, y]: readonly [number, number]): readonly Tag[] => [
  [code, x],
  [code + 10, y],
];

/** A section of the file. */
export const section = (name: string, tags: readonly Tag[]): readonly Tag[] => [
  [0, 'SECTION'],
  [2, name],
  ...tags,
  [0, 'ENDSEC'],
];
