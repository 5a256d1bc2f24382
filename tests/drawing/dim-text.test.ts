import { describe, expect, test } from 'vitest';
import { dimText, lengthText } from '../../lib/drawing/dim-text.ts';
import { DEFAULT_STYLE } from '../../lib/drawing/style.ts';
import { angular, diameter, linear, radius } from './samples.ts';

const inches = { denominator: 64, rounding: 'nearest' } as const;

describe('a length on a drawing', () => {
  test.each([
    // 340 mm is 13.386 in, and 13 3/8 in is 339.725 mm.
    ['whole eighths', 340, { system: 'in', denominator: 8, rounding: 'nearest' }, '13 3/8"'],
    ['rounded up', 340, { system: 'in', denominator: 8, rounding: 'up' }, '13 1/2"'],
    ['millimetres', 339.725, { system: 'mm', decimals: 1 }, '339.7'],
    ['both', 339.725, { system: 'both', ...inches, decimals: 1 }, '13 3/8" (339.7)'],
    ['no trailing zeros', 90, { system: 'mm', decimals: 2 }, '90'],
  ] as const)('%s', (_, mm, look, text) => {
    expect(lengthText(mm, look)).toBe(text);
  });
});

describe('a dimension', () => {
  const style = { ...DEFAULT_STYLE, lengths: { system: 'both', ...inches, decimals: 1 }, angleDecimals: 2 } as const;
  const dim = linear([0, 0], [12.7, 0], 0, [0, 10]);

  test('has the sign of its kind', () => {
    expect(dimText(radius([0, 0], [12.7, 0]), 12.7, style)).toBe('R1/2" (12.7)');
    expect(dimText(diameter([0, 0], [4, 0]), 12.7, style)).toBe('\u00d81/2" (12.7)');
    expect(
      dimText(
        angular(
          [
            [0, 0],
            [1, 0],
          ],
          [
            [0, 0],
            [0, 1],
          ],
          [9, 9],
        ),
        1.6,
        style,
      ),
    ).toBe('1.6\u00b0');
  });

  test('takes the text of the maker, with the measured one in it where asked', () => {
    expect(dimText({ ...dim, text: '13 3/8"' }, 12.7, style)).toBe('13 3/8"');
    expect(dimText({ ...dim, text: '2 x <> $& TYP' }, 12.7, style)).toBe('2 x 1/2" (12.7) $& TYP');
  });

  test('is never without text', () => {
    expect(() => dimText({ ...dim, text: ' ' }, 12.7, style)).toThrow(
      'the text of a dimension of 1/2" (12.7) is empty',
    );
  });
});
