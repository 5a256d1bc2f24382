import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Denominator,
  formatInches,
  formatLength,
  formatMm,
  formatNumber,
  type Rounding,
} from '../../lib/units/format-length.ts';
import { absolute, compare, exact, type Rational, rational, subtract, times } from './rational.ts';

const RUN = { seed: 20_242, numRuns: 2_000 };
const INCH = rational(127, 5);
const DENOMINATORS: readonly Denominator[] = [1, 2, 4, 8, 16, 32, 64];

const millimeters = fc.double({ min: -10_000, max: 10_000, noNaN: true });
const denominators = fc.constantFrom(...DENOMINATORS);

/** Reads a printed `2 1/4` or `-3/8` again, without the library. */
function readInches(text: string): Rational {
  const match = /^(-?)(?:(\d+) )?(\d+)(?:\/(\d+))?$/.exec(text);
  if (!match) throw new Error(`printed ${JSON.stringify(text)}`);
  const [, sign, whole = '0', top, bottom = '1'] = match;
  const value = BigInt(whole) * BigInt(bottom) + BigInt(top!);
  return rational(sign ? -value : value, BigInt(bottom));
}

function printed(mm: number, denominator: Denominator, rounding: Rounding): Rational {
  return times(readInches(formatInches(mm, { denominator, rounding, mark: '' })), INCH);
}

/** A millionth of a step: what the printer takes for floating-point noise. */
const noise = (denominator: Denominator): Rational => times(INCH, rational(1, denominator * 1_000_000));
const step = (denominator: Denominator): Rational => times(INCH, rational(1, denominator));

describe('formatInches', () => {
  test('up never prints less than the length, and less than a step more', () => {
    fc.assert(
      fc.property(millimeters, denominators, (mm, d) => {
        const over = subtract(printed(mm, d, 'up'), exact(mm));
        expect(compare(over, subtract(rational(0), noise(d)))).toBeGreaterThanOrEqual(0n);
        expect(compare(over, step(d))).toBeLessThan(0n);
      }),
      RUN,
    );
  });

  test('down never prints more than the length, and less than a step less', () => {
    fc.assert(
      fc.property(millimeters, denominators, (mm, d) => {
        const under = subtract(exact(mm), printed(mm, d, 'down'));
        expect(compare(under, subtract(rational(0), noise(d)))).toBeGreaterThanOrEqual(0n);
        expect(compare(under, step(d))).toBeLessThan(0n);
      }),
      RUN,
    );
  });

  test('nearest is within half a step', () => {
    fc.assert(
      fc.property(millimeters, denominators, (mm, d) => {
        const off = absolute(subtract(printed(mm, d, 'nearest'), exact(mm)));
        expect(compare(off, times(step(d), rational(500_001, 1_000_000)))).toBeLessThan(0n);
      }),
      RUN,
    );
  });

  test('a length on the grid prints the same in every direction', () => {
    fc.assert(
      fc.property(fc.integer({ min: -100_000, max: 100_000 }), denominators, (n, d) => {
        const mm = (n * 127) / (d * 5);
        const nearest = formatInches(mm, { denominator: d });
        expect(formatInches(mm, { denominator: d, rounding: 'up' })).toBe(nearest);
        expect(formatInches(mm, { denominator: d, rounding: 'down' })).toBe(nearest);
      }),
      RUN,
    );
  });

  test('a sum that is off by noise stays on its grid line', () => {
    const threeTenths = (0.1 + 0.2) * 25.4;
    expect(formatInches(25.4 + 1e-12, { rounding: 'up' })).toBe('1 in');
    expect(formatInches(25.4 - 1e-12, { rounding: 'down' })).toBe('1 in');
    expect(formatInches(threeTenths, { rounding: 'up' })).toBe('5/16 in');
  });

  test('fractions are in lowest terms, below 1, and no sign stands before zero', () => {
    fc.assert(
      fc.property(millimeters, denominators, fc.constantFrom('up', 'down', 'nearest'), (mm, d, rounding: Rounding) => {
        const text = formatInches(mm, { denominator: d, rounding });
        expect(text).toMatch(/^(0|-?[1-9]\d*|-?([1-9]\d* )?[1-9]\d*\/\d+) in$/);
        const [, top, bottom] = /(\d+)\/(\d+)/.exec(text) ?? [];
        if (top) {
          expect(Number(top) % 2).toBe(1);
          expect(Number(top)).toBeLessThan(Number(bottom));
          expect(Number(bottom)).toBeLessThanOrEqual(d);
        }
      }),
      RUN,
    );
  });

  test.each([
    [57.15, {}, '2 1/4 in'],
    [57.15, { mark: '"' }, '2 1/4"'],
    [57.15, { mark: '' }, '2 1/4'],
    [14.2875, {}, '9/16 in'],
    [0, {}, '0 in'],
    [-0, {}, '0 in'],
    [-0.1, {}, '0 in'],
    [-0.1, { rounding: 'up' }, '0 in'],
    [-0.1, { rounding: 'down' }, '-1/64 in'],
    [0.1, { rounding: 'up' }, '1/64 in'],
    [25.3, { denominator: 16 }, '1 in'],
    [-34.925, {}, '-1 3/8 in'],
    [2197.1, {}, '86 1/2 in'],
  ] as const)('%d mm with %j is %s', (mm, style, text) => {
    expect(formatInches(mm, style)).toBe(text);
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])('%d is our bug', (mm) => {
    expect(() => formatInches(mm)).toThrow(`cannot print ${mm} as a number`);
    expect(() => formatMm(mm)).toThrow(`cannot print ${mm} as a number`);
  });
});

describe('formatMm', () => {
  test.each([
    [57.15, 2, 'nearest', '57.15 mm'],
    [57.16, 1, 'nearest', '57.2 mm'],
    [57, 1, 'nearest', '57 mm'],
    [57.11, 1, 'up', '57.2 mm'],
    [57.19, 1, 'down', '57.1 mm'],
    [0.1 + 0.2, 1, 'up', '0.3 mm'],
    [-0.04, 1, 'nearest', '0 mm'],
    [-0, 1, 'nearest', '0 mm'],
    [1200, 0, 'nearest', '1200 mm'],
  ] as const)('%d mm to %d places, %s, is %s', (mm, decimals, rounding, text) => {
    expect(formatMm(mm, decimals, rounding)).toBe(text);
  });

  test('a column head may carry the unit', () => {
    expect(formatMm(1200, 1, 'nearest', '')).toBe('1200');
  });

  test('directions hold to a millionth of a step, within one step', () => {
    fc.assert(
      fc.property(millimeters, fc.integer({ min: 0, max: 3 }), (mm, decimals) => {
        const size = 10 ** -decimals;
        const up = Number(formatMm(mm, decimals, 'up', ''));
        const down = Number(formatMm(mm, decimals, 'down', ''));
        expect(up).toBeGreaterThanOrEqual(mm - size * 1.1e-6);
        expect(up).toBeLessThan(mm + size);
        expect(down).toBeLessThanOrEqual(mm + size * 1.1e-6);
        expect(down).toBeGreaterThan(mm - size);
      }),
      RUN,
    );
  });
});

describe('formatNumber', () => {
  test.each([
    [0, [], '0'],
    [-0, [], '0'],
    [-0.0001, [], '0'],
    [-0.4, [0], '0'],
    [0.5, [], '0.5'],
    [100, [], '100'],
    [100, [0], '100'],
    [1.2345, [2], '1.23'],
    [1e21, [], '1000000000000000000000'],
    [-1e22, [], '-10000000000000000000000'],
    [1e-7, [], '0'],
  ] as const)('%d with %j is %s', (value, rest, text) => {
    expect(formatNumber(value, ...rest)).toBe(text);
  });

  test('prints no exponent, no trailing zero and no -0', () => {
    fc.assert(
      fc.property(
        fc.double({ noNaN: true, noDefaultInfinity: true }),
        fc.integer({ min: 0, max: 9 }),
        (value, places) => {
          const text = formatNumber(value, places);
          expect(text).toMatch(/^-?\d+(\.\d*[1-9])?$/);
          expect(text).not.toBe('-0');
          expect(Math.abs(Number(text) - value)).toBeLessThanOrEqual(0.5001 * 10 ** -places);
        },
      ),
      RUN,
    );
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY])('%d is our bug', (value) => {
    expect(() => formatNumber(value)).toThrow(new RangeError(`cannot print ${value} as a number`));
  });
});

test('formatLength speaks the asked system', () => {
  expect(formatLength(57.15, 'in')).toBe('2 1/4 in');
  expect(formatLength(57.15, 'in', 'down', 2)).toBe('2 in');
  expect(formatLength(57, 'mm')).toBe('57 mm');
  expect(formatLength(57.01, 'mm', 'up')).toBe('57.1 mm');
});
