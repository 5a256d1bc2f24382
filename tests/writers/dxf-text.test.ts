import { expect, test } from 'vitest';
import { dxfText } from '../../lib/writers/dxf/text.ts';

test.each([
  ['1.6\u00b0', '1.6%%d'],
  ['\u00d88', '%%c8'],
  ['\u23008', '%%c8'],
  ['\u00b11/64"', '%%p1/64"'],
  ['13 3/8"', '13 3/8"'],
  ['100 % dry', '100 % dry'],
])('%s is written %s', (text, written) => {
  expect(dxfText(text)).toBe(written);
});

test.each([
  ['13\u215c"', '(U+215C)'],
  ['a\\P', '(U+005C)'],
  ['{b}', '(U+007B)'],
  ['x^2', '(U+005E)'],
  ['one\ntwo', '(U+000A)'],
  ['\u{1f333}', '(U+1F333)'],
  ['5%%d', '"%%" starts a control code'],
])('%j is refused', (text, message) => {
  expect(() => dxfText(text)).toThrow(RangeError);
  expect(() => dxfText(text)).toThrow(message);
});
