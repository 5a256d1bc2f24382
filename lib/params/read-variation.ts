import type { Override } from './assignment.ts';
import type { Issue } from './issue.ts';
import type { Param, Value } from './param.ts';
import { rangeSteps } from './range-steps.ts';
import { readCount } from './read-number.ts';
import { readParam } from './read-param.ts';
import type { Fault, Reading } from './reading.ts';
import { MOST_VALUES, USUAL_VALUES, type Variation } from './variation.ts';

export type VariationOutcome =
  | { readonly variation: Variation; readonly issues?: never }
  | { readonly issues: readonly Issue[]; readonly variation?: never };

const RANGE = /^(.*?)\.\.(.*?)(?::([^:]*))?$/;
const COUNT = /^\d{1,4}$/;

/** The forms in which values may be given. */
const FORMS = 'from..to, from..to:how many, or values with commas between';
const LIST = 'values with commas between';

/**
 * Reads `1 in..1 1/2 in:5`, `2..6`, `bearer,posts` for one parameter. Only its own limits are asked: a value that does
 * not go with the others is for the table to tell.
 */
export function readVariation(param: Param, override: Override, example: string | undefined): VariationOutcome {
  const refuse = unlike(param);
  const common = { path: override.path, from: override.from, via: '--vary' } as const;
  const issue = (fault: Partial<Issue>): Issue => ({
    ...common,
    code: 'not-a-range',
    given: override.text.trim(),
    kind: param.kind === 'division' ? 'count' : param.kind,
    expected: isNumber(param) ? FORMS : LIST,
    try: example,
    ...ownLimits(param),
    ...fault,
  });
  if (refuse) return { issues: [{ ...issue({}), code: 'cannot-vary', because: refuse }] };
  const read = isNumber(param) && override.text.includes('..') ? readRange : readEntries;
  const { values, because, faults = [], mended } = read(param, override.text.trim());
  if (values) return { variation: { path: override.path, values } };
  if (because !== undefined) return { issues: [issue({ because })] };
  return {
    issues: faults.map(({ tries: _, value: __, ...fault }) => ({ ...fault, ...common, try: mended ?? example })),
  };
}

interface Outcome {
  readonly values?: readonly Value[];
  /** What is wrong with the range or the list as a whole. */
  readonly because?: string;
  /** What is wrong with single values. */
  readonly faults?: readonly Fault[];
  /** What was probably meant. */
  readonly mended?: string | undefined;
}

const isNumber = ({ kind }: Param): boolean => ['length', 'quantity', 'count', 'division'].includes(kind);

/** Why a parameter cannot be varied at all. */
function unlike({ kind }: Param): string | undefined {
  if (kind === 'text') return 'it is a text; lengths, numbers, choices and yes or no can be tried';
  return kind === 'lengths' ? 'it is a list itself; give one list after the other by --set' : undefined;
}

function ownLimits(param: Param): Pick<Issue, 'min' | 'max' | 'unit' | 'options'> {
  if (param.kind === 'choice') return { unit: '', options: param.options };
  if (!('min' in param)) return { unit: '' };
  const unit = param.kind === 'length' ? 'length' : param.kind === 'quantity' ? param.unit : '';
  return { unit, min: param.min, max: param.max };
}

/** One value of a list or an end of a range. A division is tried at numbers of equal pieces. */
const readOne = (param: Param, text: string): Reading =>
  param.kind === 'division' ? readCount(param, text.trim()) : readParam(param, text.trim());

function readEntries(param: Param, text: string): Outcome {
  const entries = text.split(',').map((entry) => readOne(param, entry));
  if (text === '' || entries.length < 2) return { because: 'one value is nothing to compare' };
  if (entries.length > MOST_VALUES) return { because: `${entries.length} values are more than ${MOST_VALUES}` };
  const faults = entries.flatMap((entry) => entry.faults ?? []);
  if (faults.length > 0) return { faults };
  const values = entries.flatMap((entry) => (entry.faults ? [] : [entry.value]));
  const twice = values.findIndex((value, k) => values.indexOf(value) < k);
  if (twice >= 0) return { because: `${text.split(',')[twice]!.trim()} stands in it twice` };
  return { values };
}

function readRange(param: Param, text: string): Outcome {
  const [, low = '', high = '', given] = RANGE.exec(text)!;
  if (low.trim() === '') return { because: 'nothing stands before the two dots' };
  if (high.trim() === '') return { because: 'nothing stands behind the two dots' };
  const [from, to] = [readOne(param, low), readOne(param, high)];
  const faults = [...(from.faults ?? []), ...(to.faults ?? [])];
  if (from.faults || to.faults) return { faults, mended: withUnit(param, low, to.faults ? '' : to.unit, text) };
  const [start, end] = [from.value as number, to.value as number];
  if (start === end) return { because: 'both ends are the same' };
  const whole = param.kind === 'count' || param.kind === 'division';
  const count = given === undefined ? usualCount(start, end, whole) : countFrom(given);
  if (typeof count === 'string') return { because: count };
  return steps(start, end, count, from.unit || 'plain', whole);
}

function steps(start: number, end: number, count: number, unit: string, whole: boolean): Outcome {
  const values = rangeSteps(start, end, count, unit);
  if (!values) return { because: `${count} values are closer together than they can be told apart` };
  if (whole && !values.every(Number.isInteger))
    return { because: `${count} values from ${start} to ${end} are not whole` };
  return { values };
}

/** `1..1 1/2 in` with the unit of its second end behind the first, too; undefined when that is not what it lacks. */
function withUnit(param: Param, low: string, unit: string, text: string): string | undefined {
  const mended = `${low.trim()} ${unit}`;
  if (!unit || !readOne(param, low).faults || readOne(param, mended).faults) return undefined;
  return mended + text.slice(text.indexOf('..'));
}

/** How many, or what is wrong with that. */
function countFrom(given: string): number | string {
  const count = COUNT.test(given.trim()) ? Number(given) : 0;
  if (count >= 2 && count <= MOST_VALUES) return count;
  return `how many is ${JSON.stringify(given.trim())}; it must be 2 to ${MOST_VALUES}`;
}

/** Every whole number when they are few. */
function usualCount(from: number, to: number, whole: boolean): number | string {
  if (!whole) return USUAL_VALUES;
  const all = Math.abs(to - from) + 1;
  return all <= MOST_VALUES ? all : `${all} values are more than ${MOST_VALUES}; say how many behind a colon`;
}
