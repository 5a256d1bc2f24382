import type { Mark, Pt } from '../../drawing/entity.ts';
import { LAYERS } from '../../drawing/layers.ts';
import { sizes } from '../../drawing/style.ts';
import { textWidth } from '../../drawing/text-size.ts';
import type { Outline, OutlinePoint } from '../../geometry/outline.ts';
import type { Sheet } from './sheet.ts';

/** Closer to the lowest line of the outline than this counts as on it, mm. */
const LOWEST = 1e-6;

/** A V on the straight edge or end from which everything is measured, and its name where there is room for it. */
export function referenceMark(sheet: Sheet, outline: Outline): Mark[] {
  const { text: size } = sizes(sheet.style);
  const { from, to, low, name } = lowestLine(outline);
  for (const word of [name, 'reference', '']) {
    const wide = 2 * size + textWidth(word, size);
    for (let x = from + 2 * size; x + wide <= to; x += 1) {
      const [left, right, bottom, top] = [x - 1.5 * size, x + wide + size / 2, low + 0.05, low + 2.5 * size];
      const room: Pt[] = [
        [left, bottom],
        [right, bottom],
        [right, top],
        [left, top],
      ];
      if (sheet.isClear(room)) return marks(sheet, [x, low], word);
    }
  }
  return marks(sheet, [from + 2 * size, low], '');
}

interface Line {
  readonly from: number;
  readonly to: number;
  readonly low: number;
  /** "reference edge" of a piece that lies, "reference end" of one that stands. */
  readonly name: string;
}

/** The straight line that the piece stands on, as it is drawn. */
function lowestLine(outline: Outline): Line {
  const low = Math.min(...outline.map((p) => p.y));
  const isLow = (p: OutlinePoint): boolean => p.y < low + LOWEST;
  const after = (i: number): OutlinePoint => outline[(i + 1) % outline.length]!;
  const first = outline.findIndex((p, i) => isLow(p) && isLow(after(i)));
  const [a, b] = [outline[first]!, after(first)];
  const name = (a.surface ?? 'reference').replaceAll('-', ' ');
  return { from: Math.min(a.x, b.x), to: Math.max(a.x, b.x), low, name };
}

function marks({ style }: Sheet, [x, low]: Pt, word: string): Mark[] {
  const { text: size } = sizes(style);
  const points: Pt[] = [
    [x - size, low + 2 * size],
    [x, low],
    [x + size, low + 2 * size],
  ];
  const v: Mark = { kind: 'poly', layer: LAYERS.REFERENCE, points, closed: false };
  const at: Pt = [x + 2 * size, low + size / 2];
  return word === '' ? [v] : [v, { kind: 'text', layer: LAYERS.REFERENCE, text: word, at, height: style.textHeight }];
}
