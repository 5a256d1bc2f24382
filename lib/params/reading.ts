import type { Issue } from './issue.ts';
import type { Value } from './param.ts';

/** An issue before it is known where the value stood; `tries` are texts that may do instead, best first. */
export interface Fault extends Omit<Issue, 'path' | 'from' | 'try'> {
  readonly tries: readonly string[];
  /** The number that was read, when it was readable and out of range. */
  readonly value?: number | undefined;
}

export interface Good<V extends Value = Value> {
  readonly value: V;
  /** As it came, and the unit it came in: see `Issue`. */
  readonly given: string;
  readonly unit: string;
  readonly faults?: never;
}

export interface Bad {
  readonly faults: readonly Fault[];
  readonly value?: never;
  readonly given?: never;
}

export type Reading<V extends Value = Value> = Good<V> | Bad;

export const good = <V extends Value>(value: V, given: string, unit = ''): Good<V> => ({ value, given, unit });

export const bad = (fault: Omit<Fault, 'tries' | 'unit'> & Partial<Fault>): Bad => ({
  faults: [{ tries: [], unit: '', ...fault }],
});

/** Text longer than this is not read as a number, a length or a word. */
export const LONGEST_WORD = 200;

/** What came, in words: text as it is, a number with the unit it is taken in, anything else by what it is. */
export function describeGiven(raw: unknown, unit = ''): string {
  if (typeof raw === 'string') return raw;
  if (typeof raw === 'number') return Number.isFinite(raw) && unit ? `${raw} ${unit}` : `${raw}`;
  if (raw === null || typeof raw === 'boolean' || raw === undefined) return `${raw}`;
  if (Array.isArray(raw)) return 'a list';
  return typeof raw === 'object' ? 'an object' : `a ${typeof raw}`;
}
