import { expect, test } from 'vitest';
import { plainLetters } from '../../lib/drawing/plain-letters.ts';

test.each([
  [
    'Lesetisch für die Bücherei, Größe 2',
    'Lesetisch fur die Bucherei, Grosse 2',
    'Lesetisch für die Bücherei, Größe 2',
  ],
  ['Stół “nowy” – 3 × 4', 'Stol "nowy" - 3 x 4', 'Stól "nowy" - 3 × 4'],
  ['3.2° ±1 Ø8', '3.2° ±1 Ø8', '3.2° ±1 Ø8'],
  ['会議室', '???', '???'],
  ['a\tb {c} \\d ^e 50%%', "a b (c) /d 'e 50%", 'a b {c} \\d ^e 50%%'],
])('%s', (text, ascii, latin) => {
  expect(plainLetters(text, 'ascii')).toBe(ascii);
  expect(plainLetters(text, 'latin')).toBe(latin);
});
