import type { Drawing } from './drawing.ts';

/** Letters that no accent comes off of, and signs, as plain letters write them. */
const PLAIN: Readonly<Record<string, string>> = {
  ß: 'ss',
  æ: 'ae',
  Æ: 'AE',
  œ: 'oe',
  Œ: 'OE',
  ø: 'o',
  ł: 'l',
  Ł: 'L',
  đ: 'd',
  Đ: 'D',
  þ: 'th',
  Þ: 'Th',
  ð: 'd',
  ı: 'i',
  '×': 'x',
  '·': '.',
  '…': '...',
  '–': '-',
  '—': '-',
  '‘': "'",
  '’': "'",
  '“': '"',
  '”': '"',
  '«': '"',
  '»': '"',
  '\\': '/',
  '{': '(',
  '}': ')',
  '^': "'",
  '\t': ' ',
};

/** Which letters a format can hold. */
export type Alphabet = 'ascii' | 'latin';

/** The signs for degree, plus-minus and diameter have codes of their own in DXF. */
const ASCII = /^[ -[\]_`-z|~°±⌀Ø]$/;

/** What the face of the sheets surely has: ASCII and Latin-1. */
const LATIN = /^[ -~\u00a0-\u00ff]$/;

const CAN: { readonly [A in Alphabet]: RegExp } = { ascii: ASCII, latin: LATIN };

/** A text in letters that a format can hold: without accents, or as like as plain letters get; `?` for what has no likeness. */
export function plainLetters(text: string, alphabet: Alphabet): string {
  const can = CAN[alphabet];
  const letters = [...text.normalize('NFC')].map((char) => {
    if (can.test(char)) return char;
    const bare = char.normalize('NFD').replace(/\p{M}/gu, '');
    return can.test(bare) ? bare : (PLAIN[char] ?? PLAIN[bare] ?? '?');
  });
  return alphabet === 'ascii' ? letters.join('').replace(/%%+/g, '%') : letters.join('');
}

/** A drawing whose lettering a format can hold. */
export const inLetters = (drawing: Drawing, alphabet: Alphabet): Drawing => ({
  ...drawing,
  entities: drawing.entities.map((one) =>
    'text' in one && one.text !== undefined ? { ...one, text: plainLetters(one.text, alphabet) } : one,
  ),
});
