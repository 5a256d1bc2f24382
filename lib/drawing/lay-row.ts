import type { Mm } from '../units/mm.ts';
import type { Mark, Pt } from './entity.ts';
import { LAYERS } from './layers.ts';
import { letterWidth } from './letter-width.ts';
import type { Column } from './table.ts';
import { wrapText } from './wrap-text.ts';

/** Beside and above the letters in capital heights, and from one baseline to the next: common practice, no source. */
const GAP = { side: 0.55, top: 0.5, line: 1.65 } as const;

/** The least that letters may shrink to: below two thirds of its neighbors a cell looks like a remark; ours. */
const LEAST = 2 / 3;

interface Cell {
  readonly column: Column;
  readonly lines: readonly string[];
  readonly height: Mm;
}

/** A row with its text broken, ready to be put down. */
export interface LaidRow {
  readonly cells: readonly Cell[];
  readonly height: Mm;
  readonly bold: boolean;
}

function cellOf(column: Column, text: string, textHeight: Mm, bold: boolean): Cell {
  const room = column.width - 2 * GAP.side * textHeight;
  const wish = room / Math.max(room, letterWidth(text, textHeight, bold));
  const height = column.long === 'shrink' && wish >= LEAST ? textHeight * wish : textHeight;
  return { column, lines: wrapText(text, room, height * (1 - 1e-9), bold), height };
}

/** A row of cells as high as its longest text needs. */
export function layRow(columns: readonly Column[], texts: readonly string[], textHeight: Mm, bold: boolean): LaidRow {
  const cells = columns.map((column, i) => cellOf(column, texts[i] ?? '', textHeight, bold));
  const lines = Math.max(1, ...cells.map((cell) => cell.lines.length));
  return { cells, height: textHeight * (1 + 2 * GAP.top + (lines - 1) * GAP.line), bold };
}

const ALIGN = { left: 0, center: 0.5, right: 1 } as const;

/** The lettering of a row whose upper left corner is at `at`. */
export function rowText({ cells, bold }: LaidRow, at: Pt, textHeight: Mm): readonly Mark[] {
  const side = GAP.side * textHeight;
  let left = at[0];
  return cells.flatMap(({ column, lines, height }): readonly Mark[] => {
    const align = column.align ?? 'left';
    const x = left + side + ALIGN[align] * (column.width - 2 * side);
    left += column.width;
    return lines.flatMap((text, k): readonly Mark[] => {
      if (text === '') return [];
      const y = at[1] - textHeight * (1 + GAP.top + k * GAP.line);
      return [{ kind: 'text', layer: LAYERS.TEXT, text, at: [x, y], height, align, ...(bold ? { bold } : {}) }];
    });
  });
}
