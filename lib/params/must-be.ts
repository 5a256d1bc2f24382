import { formatInches, formatMm, formatNumber, type UnitSystem } from '../units/format-length.ts';
import type { Issue } from './issue.ts';
import type { Kind } from './param.ts';

type Limits = Pick<Issue, 'min' | 'max' | 'unit' | 'options' | 'item'>;

const EXPECTED: { readonly [K in Kind]: (issue: Limits, units: UnitSystem) => string } = {
  length: (issue, units) => withRange('a length', issue, units),
  lengths: (issue, units) => `a list of lengths with commas between, each ${rangeOf(issue, units)}`,
  division: (issue, units) => `${withRange('a whole number', issue, units)}, or a list of widths with commas between`,
  count: (issue, units) => withRange('a whole number', issue, units),
  quantity: (issue, units) => withRange(issue.unit ? `a number in ${issue.unit}` : 'a number', issue, units),
  choice: ({ options = [] }) => either(options),
  flag: () => 'yes or no',
  text: () => 'text',
};

/** What a value of the kind must be: `a length, 3/4 in to 4 in`. */
export function mustBe(kind: Kind, issue: Limits, units: UnitSystem): string {
  return EXPECTED[kind](issue, units);
}

/** The limits in the unit of the input, rounded inward so that a printed limit is itself allowed. */
export function rangeOf({ min, max, unit }: Limits, units: UnitSystem): string {
  const [low, high] = limitTexts(min, max, unit === 'length' ? units : unit);
  if (low === undefined) return high === undefined ? '' : `at most ${high}`;
  if (high === undefined) return `at least ${low}`;
  return low === high ? low : `${low} to ${high}`;
}

/** `cherry, walnut or white oak`. */
export const either = (names: readonly string[]): string => listed(names, 'or');

/** Names with commas between and a word before the last. */
export function listed(names: readonly string[], word: string): string {
  return names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} ${word} ${names.at(-1)}`;
}

function withRange(noun: string, issue: Limits, units: UnitSystem): string {
  const range = rangeOf(issue, units);
  return range ? `${noun}, ${range}` : noun;
}

type Texts = readonly [string | undefined, string | undefined];

function limitTexts(min: number | undefined, max: number | undefined, unit: string): Texts {
  const plain = (value: number): string => `${formatNumber(value, 6)} ${unit}`.trim();
  const exactly = (value: number): string => `${value} mm`;
  if (unit !== 'in' && unit !== 'mm')
    return [min === undefined ? min : plain(min), max === undefined ? max : plain(max)];
  const up = (value: number): string =>
    unit === 'in' ? formatInches(value, { rounding: 'up' }) : formatMm(value, 2, 'up');
  const down = (value: number): string =>
    unit === 'in' ? formatInches(value, { rounding: 'down' }) : formatMm(value, 2, 'down');
  // Closer together than a step of the printer: no round number lies between.
  if (min !== undefined && max !== undefined && max - min < STEP) return [exactly(min), exactly(max)];
  return [min === undefined ? min : up(min), max === undefined ? max : down(max)];
}

/** A 64th of an inch, the coarsest step that limits are printed in. */
const STEP = 25.4 / 64;
