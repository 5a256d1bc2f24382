import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatInches } from '../../lib/units/format-length.ts';
import { LengthTextError } from '../../lib/units/length-text-error.ts';
import { parseLength } from '../../lib/units/parse-length.ts';
import { add, isNearestDouble, type Rational, rational, times } from './rational.ts';

const RUN = { seed: 20_241, numRuns: 2_000 };
const INCH = rational(127, 5);

/** A text of an unsigned number and the exact number it stands for. */
interface Written {
  readonly text: string;
  readonly value: Rational;
}

const whole = fc.integer({ min: 0, max: 100_000 });
const bottom = fc.integer({ min: 1, max: 200 });

const integer = whole.map((n): Written => ({ text: `${n}`, value: rational(n) }));
const decimal = fc.tuple(whole, fc.stringMatching(/^[0-9]{1,40}$/)).map(
  ([n, places]): Written => ({
    text: `${n}.${places}`,
    value: add(rational(n), rational(BigInt(places), 10n ** BigInt(places.length))),
  }),
);
const bareDecimal = fc.stringMatching(/^[0-9]{1,20}$/).map(
  (places): Written => ({
    text: `.${places}`,
    value: rational(BigInt(places), 10n ** BigInt(places.length)),
  }),
);
const fraction = fc.tuple(whole, bottom).map(([t, b]): Written => ({ text: `${t}/${b}`, value: rational(t, b) }));
const mixed = fc.tuple(whole, fc.constantFrom(' ', '-'), whole, bottom).map(
  ([n, join, t, b]): Written => ({
    text: `${n}${join}${t}/${b}`,
    value: add(rational(n), rational(t, b)),
  }),
);
const number = fc.oneof(integer, decimal, bareDecimal, fraction, mixed);

const UNITS = {
  mm: rational(1),
  cm: rational(10),
  m: rational(1000),
  in: INCH,
  '"': INCH,
  '″': INCH,
  ft: rational(1524, 5),
  "'": rational(1524, 5),
  '′': rational(1524, 5),
};

/** The nearest double, or zero for a true zero (where "nearest" has no neighbor below to compare with). */
function expectNearest(mm: number, truth: Rational): void {
  if (truth.top === 0n) expect(mm).toBe(0);
  else expect(isNearestDouble(mm, truth)).toBe(true);
}

describe('against exact fractions', () => {
  test('every way to write a number, with every unit, gives the nearest double', () => {
    const unit = fc.constantFrom(...(Object.keys(UNITS) as (keyof typeof UNITS)[]));
    fc.assert(
      fc.property(number, unit, fc.constantFrom('', ' ', '   '), ({ text, value }, mark, gap) => {
        expectNearest(parseLength(`${text}${gap}${mark}`), times(value, UNITS[mark]));
      }),
      RUN,
    );
  });

  test('feet and inches add up', () => {
    const feetMark = fc.constantFrom(' ft ', ' ft', 'ft ', "' ", "'", '′ ');
    fc.assert(
      fc.property(whole, feetMark, number, fc.constantFrom(' in', 'in', '"', '″'), (feet, f, { text, value }, i) => {
        expectNearest(parseLength(`${feet}${f}${text}${i}`), times(add(rational(feet * 12), value), INCH));
      }),
      RUN,
    );
  });

  test('a minus sign mirrors the length and never makes -0', () => {
    fc.assert(
      fc.property(number, fc.constantFrom('mm', 'in', 'ft'), ({ text }, unit) => {
        const mm = parseLength(`${text} ${unit}`);
        expect(parseLength(`-${text} ${unit}`)).toBe(mm === 0 ? 0 : -mm);
      }),
      RUN,
    );
  });
});

describe('round trips', () => {
  test('n/64 in survives printing and reading to the last bit', () => {
    fc.assert(
      fc.property(fc.integer({ min: -1_000_000, max: 1_000_000 }), (n) => {
        const mm = parseLength(`${n}/64 in`);
        expect(mm).toBe((n * 127) / 320 + 0);
        expect(parseLength(formatInches(mm))).toBe(mm);
        expect(parseLength(formatInches(mm, { mark: '"' }))).toBe(mm);
      }),
      RUN,
    );
  });

  test('decimal millimeters read as JavaScript reads the number', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1e6, noNaN: true }), (mm) => {
        expect(parseLength(`${mm} mm`)).toBe(mm);
      }),
      RUN,
    );
  });
});

test.each([
  ['0.75 in', 19.05],
  ['0.7 in', 17.78],
  ['10/64 in', 3.96875],
  ['1 3/8 in', 34.925],
  ['1-3/8 in', 34.925],
  ['-1-3/8 in', -34.925],
  ['-1/2 in', -12.7],
  ['1 10/64 in', 29.36875],
  ['71/2 in', 901.7],
  [`7' 2 1/2"`, 2197.1],
  [`7'2-1/2"`, 2197.1],
  ['7 ft 10/64 in', 2137.56875],
  ["7'", 2133.6],
  ['7 ft', 2133.6],
  ['5.7 cm', 57],
  ['2.1 m', 2100],
  ['.5 in', 12.7],
  ['0 mm', 0],
  ['-0 mm', 0],
  ['-0/64 in', 0],
  ['  2\t1/4\n in ', 57.15],
  ['2\u00a01/4 in', 57.15],
  ['0.1 mm', 0.1],
  ['0.30000000000000000001 mm', 0.3],
  [`0.${'0'.repeat(400)}1 mm`, 0],
  [`1.${'0'.repeat(400)}1 mm`, 1],
  [`${'9'.repeat(400)}/${'9'.repeat(400)} in`, 25.4],
])('%j is %d mm', (text, mm) => {
  expect(parseLength(text)).toBe(mm);
});

const EXAMPLES = 'write 57 mm, 2 1/4 in, 0.75 in, 7 ft or 7 ft 2 1/2 in';

test.each([
  ['', 'not a length', EXAMPLES],
  ['   ', 'not a length', EXAMPLES],
  ['mm', 'not a length', EXAMPLES],
  ['two in', 'not a length', EXAMPLES],
  ['1e3 mm', 'not a length', EXAMPLES],
  ['0x10 mm', 'not a length', EXAMPLES],
  ['NaN mm', 'not a length', EXAMPLES],
  ['Infinity mm', 'not a length', EXAMPLES],
  ['1,5 mm', 'not a length', EXAMPLES],
  ['1. mm', 'not a length', EXAMPLES],
  ['1 2 mm', 'not a length', EXAMPLES],
  ['1 /2 in', 'not a length', EXAMPLES],
  ['1 - 3/8 in', 'not a length', EXAMPLES],
  ['1.5/2 in', 'not a length', EXAMPLES],
  ['1/-2 in', 'not a length', EXAMPLES],
  ['--1 mm', 'not a length', EXAMPLES],
  ['- 1 mm', 'not a length', EXAMPLES],
  ['+1 mm', 'not a length', EXAMPLES],
  ['2 in 7 ft', 'not a length', EXAMPLES],
  ['7 ft 2', 'not a length', EXAMPLES],
  ['7 ft -2 in', 'not a length', EXAMPLES],
  ['7.5 ft 2 in', 'not a length', EXAMPLES],
  ['2 IN', 'not a length', EXAMPLES],
  ['½ in', 'not a length', EXAMPLES],
  ['２ in', 'not a length', EXAMPLES],
  ['٣ mm', 'not a length', EXAMPLES],
  ['2 in\u0000', 'not a length', EXAMPLES],
  ['−2 in', 'not a length', EXAMPLES],
  ['🪵', 'not a length', EXAMPLES],
  ['19', 'no unit', 'it has no unit; write 19 mm or 19 in'],
  ['.5', 'no unit', 'it has no unit; write .5 mm or .5 in'],
  ['-3', 'no unit', 'it has no unit; write -3 mm or -3 in'],
  ['1 3/8', 'no unit', 'it has no unit; write 1 3/8 mm or 1 3/8 in'],
  ['1/0 in', 'zero below', 'a fraction cannot have 0 below'],
  ['3 1/00 in', 'zero below', 'a fraction cannot have 0 below'],
  ["7' 1/0 in", 'zero below', 'a fraction cannot have 0 below'],
  [`1${'0'.repeat(308)} m`, 'too large', 'it is too large to compute with'],
])('%j is refused: %s', (text, reason, hint) => {
  const refusal = caught(() => parseLength(text));
  expect(refusal).toBeInstanceOf(LengthTextError);
  expect(refusal).toBeInstanceOf(RangeError);
  expect(refusal).toMatchObject({ reason, hint, message: `${JSON.stringify(text)} is not a length; ${hint}` });
});

test('any text either reads as a finite length or is refused with a LengthTextError', () => {
  const alphabet = fc.constantFrom(...'0123456789./- \'"minftc″½e,\u00a0');
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string(),
        fc.array(alphabet, { maxLength: 12 }).map((a) => a.join('')),
      ),
      (text) => {
        const result = caught(() => parseLength(text));
        expect(result instanceof LengthTextError || (Number.isFinite(result) && !Object.is(result, -0))).toBe(true);
      },
    ),
    { ...RUN, numRuns: 10_000 },
  );
});

function caught(run: () => unknown): unknown {
  try {
    return run();
  } catch (error) {
    return error;
  }
}
