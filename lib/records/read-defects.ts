import type { Defect } from '../model/records.ts';
import { readLength } from '../params/read-length.ts';
import { bad, type Fault, good, type Reading } from '../params/reading.ts';
import type { Mm } from '../units/mm.ts';

/** The board that a defect lies on; what is not known yet limits nothing. */
export interface BoardSize {
  readonly length: Mm;
  readonly width: Mm;
  readonly thickness: Mm;
}

/** How one defect is written; several stand with `;` between them. */
const EXAMPLE = 'knot 10 in..14 in x 1 in..2 in face A 1/4 in deep; check 0 in..3 in through';

const HOW = `what it is, from..to along the board, x near..far across it (left out: the whole width), then face A or B and how deep, or through: ${EXAMPLE}`;

/** `knot 10 in..14 in x 1 in..2 in face A 1/4 in deep` */
const DEFECT =
  /^([a-z][a-z -]*?) +([\d.].*?)\.\.(.+?)(?: +x +(.+?)\.\.(.+?))?(?: +face +(a|b) +(.+?) +deep| +(through))$/i;

/** The defects of one board; everything wrong with each of them. */
export function readDefects(text: string, board: BoardSize): { defects: readonly Defect[]; faults: readonly Fault[] } {
  const read = text
    .split(';')
    .map((one) => one.trim())
    .filter(Boolean)
    .map((one) => readDefect(one, board));
  return {
    defects: read.flatMap(({ value }) => (value ? [value] : [])),
    faults: read.flatMap(({ faults }) => faults),
  };
}

interface DefectReading {
  readonly value?: Defect;
  readonly faults: readonly Fault[];
}

function readDefect(text: string, { length, width, thickness }: BoardSize): DefectReading {
  const found = DEFECT.exec(text);
  if (!found) return { faults: bad({ code: 'unreadable', given: text, expected: 'a defect', because: HOW }).faults };
  const [, what = '', from = '', to = '', near, far, face, depth, through] = found;
  const faults: Fault[] = [];
  const take = (part: string, max: Mm, because: string): Mm => {
    const { value, faults: wrong = [] } = readLength({ min: 0, max, because }, part);
    faults.push(...wrong.map((fault) => ({ ...fault, because: `of the defect "${text}"; ${fault.because ?? ''}` })));
    return (value as Mm | undefined) ?? 0;
  };
  const whole = near === undefined || far === undefined;
  const along = [take(from, length, 'the board ends there'), take(to, length, 'the board ends there')] as const;
  const over = 'the board is no wider';
  const across = whole ? ([0, width] as const) : ([take(near, width, over), take(far, width, over)] as const);
  const deep = through ? thickness : take(depth ?? '', thickness, 'the board is no thicker; write through');
  if (faults.length > 0) return { faults };
  const turned = [along, across].find(([low, high]) => low >= high);
  if (turned) {
    const because = 'the first number of from..to must be the smaller one';
    return { faults: bad({ code: 'unreadable', given: text, expected: 'a defect', because }).faults };
  }
  const side = through ? 'through' : face!.toUpperCase() === 'A' ? 'A' : 'B';
  const value: Defect = {
    what: what.toLowerCase(),
    from: along[0],
    to: along[1],
    near: across[0],
    far: across[1],
    face: side,
    depth: deep,
  };
  return { value, faults };
}

/** Words for the color of a board among its pile. */
const TONES: Readonly<Record<string, number>> = { light: 0, medium: 0.5, dark: 1 };

/** A tone as a word, or as a number from 0, the lightest, to 1, the darkest. */
export function readTone(text: string): Reading<number> {
  const word = text.toLowerCase();
  if (Object.hasOwn(TONES, word)) return good(TONES[word]!, text);
  const value = /^(?:\d+(?:\.\d+)?|\.\d+)$/.test(text) ? Number(text) : Number.NaN;
  if (value >= 0 && value <= 1) return good(value, text);
  return bad({ code: 'unreadable', given: text, expected: 'light, medium, dark, or a number from 0 to 1' });
}
