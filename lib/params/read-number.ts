import type { CountParam, QuantityParam } from './param.ts';
import { bad, describeGiven, type Fault, good, LONGEST_WORD, type Reading } from './reading.ts';

const NUMBER = /^-?(?:\d+(?:\.\d+)?|\.\d+)$/;

/** A whole number. */
export function readCount(param: Pick<CountParam, 'min' | 'max' | 'because'>, raw: unknown): Reading<number> {
  const given = describeGiven(raw);
  const limits = { kind: 'count', min: param.min, max: param.max, given } as const;
  const value = numberFrom(raw, '');
  if (value === undefined) return bad({ code: typeof raw === 'string' ? 'unreadable' : 'wrong-type', ...limits });
  const nearest = `${Math.min(Math.max(Math.round(value), param.min), param.max)}`;
  if (!Number.isInteger(value)) return bad({ code: 'not-whole', ...limits, tries: [nearest] });
  return within(value, { ...limits, because: param.because });
}

/** A number that carries its unit as text, and is taken in that unit as a number. */
export function readQuantity(param: QuantityParam, raw: unknown): Reading<number> {
  const { min, max, unit } = param;
  const limits = { kind: 'quantity', min, max, unit, given: describeGiven(raw, unit) } as const;
  const value = numberFrom(raw, unit);
  if (value !== undefined) return within(value, { ...limits, because: param.because });
  if (typeof raw !== 'string') return bad({ code: 'wrong-type', ...limits });
  const bare = raw.trim();
  return unit && isNumber(bare)
    ? bad({ code: 'no-unit', ...limits, tries: [`${bare} ${unit}`] })
    : bad({ code: 'unreadable', ...limits });
}

function within(value: number, limits: Omit<Fault, 'code' | 'tries' | 'unit'> & { readonly unit?: string }) {
  if (value >= limits.min! && value <= limits.max!) return good(value, limits.given, limits.unit);
  return bad({ code: 'out-of-range', ...limits, because: limits.because || undefined, value });
}

function numberFrom(raw: unknown, unit: string): number | undefined {
  if (typeof raw === 'number') return Number.isFinite(raw) ? raw + 0 : undefined;
  if (typeof raw !== 'string' || !raw.trim().endsWith(unit)) return undefined;
  const trimmed = raw.trim();
  const bare = trimmed.slice(0, trimmed.length - unit.length).trim();
  return isNumber(bare) ? Number(bare) + 0 : undefined;
}

const isNumber = (text: string): boolean => text.length <= LONGEST_WORD && NUMBER.test(text);
