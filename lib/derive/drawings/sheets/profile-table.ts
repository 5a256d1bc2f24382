import { type Block, block } from '../../../drawing/block.ts';
import type { Entity } from '../../../drawing/drawing.ts';
import { roomFor } from '../../../drawing/fit-text.ts';
import { LAYERS } from '../../../drawing/layers.ts';
import { spread } from '../../../drawing/spread.ts';
import type { Style } from '../../../drawing/style.ts';
import type { Mm } from '../../../units/mm.ts';

/** What stands under one place of a section, from above. */
export interface ProfileColumn {
  /** Place of the column in the section, model mm. */
  readonly x: Mm;
  /** Where the section is left downwards. */
  readonly y: Mm;
  readonly cells: readonly string[];
}

/** From row to row, and beside each text; paper mm; our convention. */
const ROW: Mm = 5;
const PAD: Mm = 1.5;

/** Height of the slanting lines where columns stand too close, paper mm; our convention. */
const SLANT: Mm = 5;

/** A table under a section: each column stands under its place, or as near to it as it has room, with a line that leads there. */
export function profileTable(
  heads: readonly string[],
  columns: readonly ProfileColumn[],
  top: Mm,
  style: Style,
): Block {
  const { scale, textHeight } = style;
  const widths = columns.map(({ cells }) => (Math.max(...cells.map((c) => roomFor(c, textHeight))) + 2 * PAD) * scale);
  const middles = spread(columns.map(({ x }, k) => ({ middle: x, width: widths[k]! })));
  const headWidth = (Math.max(...heads.map((h) => roomFor(h, textHeight, true))) + 2 * PAD) * scale;
  const left = Math.min(...middles.map((m, k) => m - widths[k]! / 2)) - headWidth;
  const right = Math.max(...middles.map((m, k) => m + widths[k]! / 2));
  const head = top - SLANT * scale;
  const rowY = (k: number): Mm => head - k * ROW * scale;
  const line = (...points: (readonly [Mm, Mm])[]): Entity => ({
    kind: 'poly',
    layer: LAYERS.TEXT,
    points,
    closed: false,
  });
  const text = (content: string, x: Mm, row: number, align: 'left' | 'center', bold = false): Entity => ({
    kind: 'text',
    layer: LAYERS.TEXT,
    text: content,
    at: [x, rowY(row + 0.5)],
    height: textHeight,
    align,
    valign: 'middle',
    ...(bold ? { bold } : {}),
  });
  return block(
    [
      ...heads.flatMap((h, k): Entity[] => [
        line([left, rowY(k)], [right, rowY(k)]),
        text(h, left + PAD * scale, k, 'left', true),
      ]),
      line([left, rowY(heads.length)], [right, rowY(heads.length)]),
      ...columns.flatMap(({ x, y, cells }, k): Entity[] => [
        {
          kind: 'poly',
          layer: LAYERS.CENTER,
          points: [
            [x, y],
            [x, top],
            [middles[k]!, head],
          ],
          closed: false,
        },
        ...cells.map((cell, row) => text(cell, middles[k]!, row, 'center')),
      ]),
    ],
    style,
  );
}
