import type { Mm } from '../units/mm.ts';
import { letterWidth } from './letter-width.ts';

/** Lines no longer than `width`, broken at spaces; a word that is longer by itself is broken inside. */
export function wrapText(text: string, width: Mm, height: Mm, bold = false): readonly string[] {
  const fits = (line: string): boolean => letterWidth(line, height, bold) <= width;
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (fits(longer)) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    const pieces = fits(word) ? [word] : broken(word, fits);
    lines.push(...pieces.slice(0, -1));
    line = pieces.at(-1)!;
  }
  return [...lines, line];
}

/** A word in pieces that fit, each of one character at least. */
function broken(word: string, fits: (piece: string) => boolean): string[] {
  const pieces: string[] = [''];
  for (const character of word) {
    const last = pieces.at(-1)!;
    if (last !== '' && !fits(last + character)) pieces.push(character);
    else pieces[pieces.length - 1] = last + character;
  }
  return pieces;
}
