import type { Box } from '../../../drawing/bounds.ts';
import type { Entity } from '../../../drawing/drawing.ts';
import type { Pt } from '../../../drawing/entity.ts';
import { LAYERS } from '../../../drawing/layers.ts';
import type { SheetHeading } from '../../../drawing/sheet.ts';
import type { Style } from '../../../drawing/style.ts';
import type { Mm } from '../../../units/mm.ts';

/** A cell to write in, as a share of the width and rows from above. */
interface Cell {
  readonly label: string;
  readonly from: number;
  readonly to: number;
  readonly row: number;
}

/** Shares of the width: our convention. */
const WIDE: readonly Cell[] = [
  { label: 'client, name', from: 0, to: 0.36, row: 0 },
  { label: 'signature', from: 0.36, to: 0.78, row: 0 },
  { label: 'date', from: 0.78, to: 1, row: 0 },
  { label: 'maker, name', from: 0, to: 0.36, row: 1 },
  { label: 'signature', from: 0.36, to: 0.78, row: 1 },
  { label: 'date', from: 0.78, to: 1, row: 1 },
];

/** The same where there is less room. */
const NARROW: readonly Cell[] = [
  { label: 'client, signature', from: 0, to: 0.7, row: 0 },
  { label: 'date', from: 0.7, to: 1, row: 0 },
  { label: 'maker, signature', from: 0, to: 0.7, row: 1 },
  { label: 'date', from: 0.7, to: 1, row: 1 },
];

/** Narrower than this, names and signatures share a cell; paper mm; our convention. */
const ROOMY: Mm = 120;

/** Heights of the heading and of the labels, of the series of ISO 3098-1; from a border to a label, our convention; paper mm. */
const HEAD: Mm = 2.5;
const LABEL: Mm = 1.8;
const PAD: Mm = 1.5;

/** A box in which client and maker sign, over the whole of a room. */
export function signatures({ min, max }: Box, { revision, date }: SheetHeading, { scale }: Style): Entity[] {
  const width = (max[0] - min[0]) / scale;
  const height = (max[1] - min[1]) / scale - 2;
  const at = (x: Mm, down: Mm): Pt => [min[0] + x * scale, min[1] + (height - down) * scale];
  const text = (content: string, x: Mm, down: Mm, size: Mm, bold = false): Entity => ({
    kind: 'text',
    layer: LAYERS.TEXT,
    text: content,
    at: at(x, down),
    height: size,
    ...(bold ? { bold } : {}),
  });
  const line = (...points: Pt[]): Entity => ({ kind: 'poly', layer: LAYERS.TEXT, points, closed: false });
  const top = HEAD + 2 * PAD;
  const row = (height - top) / 2;
  const wide = width >= ROOMY;
  const words = wide ? `Approved as drawn: revision ${revision} of ${date}` : `Approved: revision ${revision}`;
  return [
    text(words, 0, HEAD, HEAD, true),
    line(at(0, top), at(width, top)),
    ...(wide ? WIDE : NARROW).flatMap((cell): Entity[] => {
      const [left, right] = [cell.from * width, cell.to * width];
      const down = top + cell.row * row;
      return [
        text(cell.label, left + PAD, down + PAD + LABEL, LABEL),
        line(at(left, down), at(left, down + row), at(right, down + row), at(right, down)),
      ];
    }),
  ];
}
