import fc from 'fast-check';
import { expect, test } from 'vitest';
import { nearestDouble } from '../../lib/units/nearest-double.ts';
import { exact, isNearestDouble, rational } from './rational.ts';

const RUN = { seed: 20_243, numRuns: 3_000 };
const positive = fc.oneof(fc.bigInt({ min: 1n, max: 1n << 60n }), fc.bigInt({ min: 1n, max: 1n << 400n }));

test('no other double lies nearer', () => {
  fc.assert(
    fc.property(positive, positive, (num, den) => {
      expect(isNearestDouble(nearestDouble(num, den), rational(num, den))).toBe(true);
    }),
    RUN,
  );
});

test('gives back any double from its exact fraction', () => {
  fc.assert(
    fc.property(fc.double({ min: 1e-300, noNaN: true, noDefaultInfinity: true }), (value) => {
      const { top, bottom } = exact(value);
      expect(nearestDouble(top, bottom)).toBe(value);
      expect(nearestDouble(top * 3n, bottom * 3n)).toBe(value);
    }),
    RUN,
  );
});

test('an exact half goes to the even neighbor, a hair more goes up', () => {
  const big = 2n ** 53n;
  expect(nearestDouble((big + 1n) * 10n, 10n)).toBe(2 ** 53);
  expect(nearestDouble((big + 1n) * 10n ** 30n + 1n, 10n ** 30n)).toBe(2 ** 53 + 2);
  expect(nearestDouble(big + 3n, 1n)).toBe(2 ** 53 + 4);
});

test('what is out of reach becomes 0 or infinite', () => {
  expect(nearestDouble(0n, 7n)).toBe(0);
  expect(nearestDouble(0n, 10n ** 400n)).toBe(0);
  expect(nearestDouble(1n, 10n ** 400n)).toBe(0);
  expect(nearestDouble(10n ** 400n, 1n)).toBe(Number.POSITIVE_INFINITY);
});
