import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { choice, count, division, flag, length, lengths, quantity, text } from '../../lib/params/fields.ts';
import { defaultText, formatExactly, formatValue } from '../../lib/params/format-value.ts';
import { readParam } from '../../lib/params/read-param.ts';

const RUN = { seed: 20_253, numRuns: 2_000 };

const aLength = length({ label: 'x', default: '1 in', min: '-100 ft', max: '100 ft' });
const aList = lengths({ label: 'x', default: ['2 in', 30], min: '-100 ft', max: '100 ft', maxItems: 5 });
const aDivision = division({ label: 'x', default: 8, min: 1, max: 40, minWidth: '-100 ft', maxWidth: '100 ft' });
const aCount = count({ label: 'x', default: 3, min: -1000, max: 1000 });
const aQuantity = quantity({ label: 'x', unit: '%', default: 7.5, min: -1000, max: 1000 });
const aChoice = choice({ label: 'x', options: ['cherry', 'white oak'] });
const aFlag = flag({ label: 'x', default: true });
const aText = text({ label: 'x', default: '' });

const system = fc.constantFrom('in', 'mm');
const sixtyFourths = fc.integer({ min: -70_000, max: 70_000 }).map((n) => (n * 127) / 320 + 0);
const tenths = fc.integer({ min: -300_000, max: 300_000 }).map((n) => n / 10 + 0);
const any = fc.double({ min: 1e-6, max: 30_000, noNaN: true });
const mm = fc.oneof(sixtyFourths, tenths, any);

describe('reads back exactly', () => {
  test('a length, in either system', () => {
    fc.assert(
      fc.property(mm, system, (value, units) => {
        expect(readParam(aLength, formatValue(aLength, value, units)).value).toBe(value);
      }),
      RUN,
    );
  });

  test('lists of lengths', () => {
    const list = fc.array(mm, { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(list, system, (value, units) => {
        expect(readParam(aList, formatValue(aList, value, units)).value).toEqual(value);
        expect(readParam(aDivision, formatValue(aDivision, value, units)).value).toEqual(value);
      }),
      RUN,
    );
    expect(readParam(aList, formatValue(aList, [], 'in')).value).toEqual([]);
  });

  test('numbers', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 40 }), tenths, (whole, tenth) => {
        fc.pre(Math.abs(tenth) <= 1000);
        expect(readParam(aDivision, formatValue(aDivision, whole, 'in')).value).toBe(whole);
        expect(readParam(aCount, formatValue(aCount, whole, 'in')).value).toBe(whole);
        expect(readParam(aQuantity, formatValue(aQuantity, tenth, 'in')).value).toBe(tenth);
      }),
      RUN,
    );
  });

  test('words', () => {
    for (const option of aChoice.options) {
      expect(readParam(aChoice, formatValue(aChoice, option, 'in')).value).toBe(option);
    }
    for (const on of [true, false]) expect(readParam(aFlag, formatValue(aFlag, on, 'in')).value).toBe(on);
    for (const words of ['', ' a ', 'a=b, "c"']) {
      expect(readParam(aText, formatValue(aText, words, 'in')).value).toBe(words);
    }
  });

  test('the default, in the words of the spec', () => {
    for (const param of [aLength, aList, aDivision, aCount, aQuantity, aChoice, aFlag, aText]) {
      expect(readParam(param, defaultText(param)).value).toEqual(param.default);
    }
  });
});

test('inches where a 64th says it, otherwise millimeters', () => {
  expect(formatExactly(57.15, 'in')).toBe('2 1/4 in');
  expect(formatExactly(57, 'in')).toBe('57 mm');
  expect(formatExactly(17.78, 'in')).toBe('17.78 mm');
  expect(formatExactly(57.15, 'mm')).toBe('57.15 mm');
  expect(formatValue(aDivision, [127, 30], 'in')).toBe('5 in, 30 mm');
  expect(defaultText(aList)).toBe('2 in, 30 mm');
});
