import { LengthTextError } from '../units/length-text-error.ts';
import type { Mm } from '../units/mm.ts';
import { parseLength } from '../units/parse-length.ts';
import { bad, describeGiven, good, LONGEST_WORD, type Reading } from './reading.ts';

/** Limits of one length, and the words for an issue about it. */
export interface LengthLimits {
  readonly min: Mm;
  readonly max: Mm;
  readonly because: string;
}

/** A length from text with its unit or from a number of mm, within its limits. */
export function readLength({ min, max, because }: LengthLimits, raw: unknown): Reading<Mm> {
  const limits = { kind: 'length', min, max } as const;
  const reading = typeof raw === 'string' ? lengthFromText(raw) : lengthFromNumber(raw);
  if (reading.faults) return bad({ ...reading.faults[0]!, ...limits });
  const { value, given, unit } = reading;
  if (value >= min && value <= max) return reading;
  return bad({ code: 'out-of-range', given, unit, ...limits, because: because || undefined, value });
}

/** Whether the text speaks inches or feet. */
export const speaksInches = (text: string): boolean => /in|ft|["'″′]/.test(text);

function lengthFromText(text: string): Reading<Mm> {
  if (text.length > LONGEST_WORD) return bad({ code: 'unreadable', given: text, unit: 'length' });
  try {
    return good(parseLength(text), text, speaksInches(text) ? 'in' : 'mm');
  } catch (error) {
    if (!(error instanceof LengthTextError)) throw error;
    const bare = text.trim();
    return error.reason === 'no unit'
      ? bad({ code: 'no-unit', given: text, unit: 'length', tries: [`${bare} mm`, `${bare} in`] })
      : bad({ code: 'unreadable', given: text, unit: 'length', because: error.hint });
  }
}

function lengthFromNumber(raw: unknown): Reading<Mm> {
  const given = describeGiven(raw, 'mm');
  // Adding 0 turns -0 into 0.
  return typeof raw === 'number' && Number.isFinite(raw)
    ? good(raw + 0, given, 'mm')
    : bad({ code: 'wrong-type', given, unit: 'length' });
}
