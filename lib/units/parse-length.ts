import { LengthTextError } from './length-text-error.ts';
import type { Mm } from './mm.ts';
import { nearestDouble } from './nearest-double.ts';

interface Unit {
  /** Length of the unit as an exact fraction of a millimetre. */
  readonly num: bigint;
  readonly den: bigint;
}

const UNITS: Readonly<Record<string, Unit>> = {
  mm: { num: 1n, den: 1n },
  cm: { num: 10n, den: 1n },
  m: { num: 1000n, den: 1n },
  in: { num: 127n, den: 5n },
  '"': { num: 127n, den: 5n },
  ft: { num: 1524n, den: 5n },
  "'": { num: 1524n, den: 5n },
};

const UNSIGNED = String.raw`\d+ \d+\/\d+|\d+-\d+\/\d+|\d+\/\d+|\d+(?:\.\d+)?|\.\d+`;
const SINGLE = new RegExp(`^(${UNSIGNED}) ?(mm|cm|m|in|"|ft|')$`);
const FEET_AND_INCHES = new RegExp(String.raw`^(\d+) ?(?:ft|') ?(${UNSIGNED}) ?(?:in|")$`);
const BARE = new RegExp(`^-?(?:${UNSIGNED})$`);
const QUANTITY = /^(?:(\d+)[ -])?(\d+)\/(\d+)$|^(\d*)(?:\.(\d+))?$/;

/**
 * Millimetres from text that carries its unit: `2 1/4 in`, `2-1/4 in`, `0.75"`, `7 ft`, `7 ft 2 1/2 in`, `57 mm`,
 * `5.7 cm`, `2.1 m`. The text is read as an exact fraction and divided once, so the result is the double nearest to
 * the true length.
 *
 * @throws LengthTextError when the text is not such a length; its hint says what to write instead.
 */
export function parseLength(text: string): Mm {
  const clean = text.trim().replace(/\s+/g, ' ').replace(/″/g, '"').replace(/′/g, "'");
  const negative = clean.startsWith('-');
  const body = negative ? clean.slice(1) : clean;
  const compound = FEET_AND_INCHES.exec(body);
  const single = SINGLE.exec(body);
  let mm: number;
  if (compound) {
    const feet = { num: BigInt(compound[1]!) * 12n, den: 1n };
    const inches = quantity(compound[2]!, text);
    mm = toMm({ num: feet.num * inches.den + inches.num, den: inches.den }, UNITS['in']!);
  } else if (single) {
    mm = toMm(quantity(single[1]!, text), UNITS[single[2]!]!);
  } else {
    throw refusal(text, clean);
  }
  if (mm === Number.POSITIVE_INFINITY) throw new LengthTextError(text, 'too large', 'it is too large to compute with');
  return negative && mm !== 0 ? -mm : mm;
}

function quantity(text: string, whole: string): Unit {
  const [, mixed = '0', top, bottom, integer, decimals = ''] = QUANTITY.exec(text)!;
  if (top !== undefined) {
    const den = BigInt(bottom!);
    if (den === 0n) throw new LengthTextError(whole, 'zero below', 'a fraction cannot have 0 below');
    return { num: BigInt(mixed) * den + BigInt(top), den };
  }
  return { num: BigInt(`${integer}${decimals}`), den: 10n ** BigInt(decimals.length) };
}

function toMm(count: Unit, unit: Unit): number {
  return nearestDouble(count.num * unit.num, count.den * unit.den);
}

function refusal(text: string, clean: string): LengthTextError {
  if (BARE.test(clean)) return new LengthTextError(text, 'no unit', `it has no unit; write ${clean} mm or ${clean} in`);
  return new LengthTextError(text, 'not a length', 'write 57 mm, 2 1/4 in, 0.75 in, 7 ft or 7 ft 2 1/2 in');
}
