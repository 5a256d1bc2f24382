import type { Mm } from '../units/mm.ts';
import { nearLengths } from './near-value.ts';
import type { DivisionParam, LengthsParam } from './param.ts';
import { type LengthLimits, readLength, speaksInches } from './read-length.ts';
import { readCount } from './read-number.ts';
import { bad, describeGiven, type Fault, good, type Reading } from './reading.ts';

interface ListLimits extends LengthLimits {
  readonly minItems: number;
  readonly maxItems: number;
}

/** Text longer than this is not read as a list. */
const LONGEST_LIST = 2_000;

const COUNT = /^-?(?:\d+|\d*\.\d+)$/;

/** A list of lengths: an array, or text with commas between. */
export function readLengths(param: LengthsParam, raw: unknown): Reading<readonly Mm[]> {
  return readItems(param, 'lengths', raw);
}

/** A number of equal pieces, or the widths of the pieces. */
export function readDivision(param: DivisionParam, raw: unknown): Reading<number | readonly Mm[]> {
  const { min, max, minWidth, maxWidth, because } = param;
  const isList = typeof raw === 'string' ? /\d/.test(raw) && !COUNT.test(raw.trim()) : Array.isArray(raw);
  if (!isList) return asDivision(readCount(param, raw));
  return readItems({ min: minWidth, max: maxWidth, because, minItems: min, maxItems: max }, 'division', raw);
}

function asDivision(reading: Reading<number>): Reading<number> {
  return reading.faults ? { faults: reading.faults.map((fault) => ({ ...fault, kind: 'division' })) } : reading;
}

function readItems(
  { minItems, maxItems, ...each }: ListLimits,
  kind: 'lengths' | 'division',
  raw: unknown,
): Reading<readonly Mm[]> {
  const items = itemsOf(raw);
  if (!items) {
    const code = typeof raw === 'string' ? 'unreadable' : 'wrong-type';
    return bad({ code, kind, given: describeGiven(raw, 'mm'), unit: 'length', min: each.min, max: each.max });
  }
  const given = typeof raw === 'string' ? raw : items.map((item) => describeGiven(item, 'mm')).join(', ');
  if (items.length < minItems || items.length > maxItems) {
    return bad({ code: 'wrong-size', kind, given: `${items.length}`, min: minItems, max: maxItems });
  }
  const readings = items.map((item) => readLength(each, item));
  if (!readings.some((reading) => reading.faults)) {
    const values = Object.freeze(readings.map((reading) => reading.value!));
    return good(values, given, speaksInches(given) ? 'in' : 'mm');
  }
  const repaired = readings.map((reading) => reading.given?.trim() ?? repair(each, reading.faults![0]!));
  const tries = repaired.includes(undefined) ? [] : [repaired.join(', ')];
  const faults = readings.map((reading, i) =>
    (reading.faults ?? []).map((fault) => ({ ...fault, item: i + 1, tries })),
  );
  return { faults: faults.flat() };
}

/** What may stand in a list instead of a bad entry. */
function repair(each: LengthLimits, { value, unit, tries }: Fault): string | undefined {
  if (value !== undefined) return nearLengths(each, value, unit)[0];
  return tries.find((text) => !readLength(each, text).faults);
}

/** The entries of a list; undefined when it is no list at all. */
function itemsOf(raw: unknown): readonly unknown[] | undefined {
  if (Array.isArray(raw)) return Array.from(raw);
  if (typeof raw !== 'string' || raw.length > LONGEST_LIST) return undefined;
  return raw.trim() === '' ? [] : raw.split(',').map((item) => item.trim());
}
