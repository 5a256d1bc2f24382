import { type Block, block } from '../../../drawing/block.ts';
import { roomFor } from '../../../drawing/fit-text.ts';
import { layTable } from '../../../drawing/lay-table.ts';
import { moveMark } from '../../../drawing/place.ts';
import type { Style } from '../../../drawing/style.ts';
import type { Column, TableRow } from '../../../drawing/table.ts';
import { wrapText } from '../../../drawing/wrap-text.ts';
import type { Mm } from '../../../units/mm.ts';

/** A column that is as wide as its widest text, or `most` paper mm, where longer text is broken. */
export interface FittedColumn {
  readonly head: string;
  readonly align?: Column['align'];
  readonly most?: Mm;
}

/** Beside the text of a cell, in capital heights, both sides together: as a row of a table leaves it. */
const BESIDE = 1.1;

/** Room for the cells of a column: that of the longest, or the least from `most` on that all broken lines keep to. */
function fittedWidth({ head, most = Infinity }: FittedColumn, cells: readonly string[], height: Mm): Mm {
  const headWidth = roomFor(head, height, true);
  const whole = Math.max(headWidth, ...cells.map((cell) => roomFor(cell, height)));
  for (let width = Math.max(most, headWidth); width < whole; width += 1) {
    const lines = cells.flatMap((cell) => wrapText(cell, width, height * (1 - 1e-9)));
    if (lines.every((line) => roomFor(line, height) <= width)) return width;
  }
  return whole;
}

/** A table whose columns fit their text in any usual face; letters of `height` paper mm, the upper left corner is the origin. */
export function tableBlock(
  columns: readonly FittedColumn[],
  rows: readonly TableRow[],
  height: Mm,
  style: Style,
): Block {
  const widthOf = (column: FittedColumn, k: number): Mm => {
    const cells = rows.map((row) => ('band' in row ? '' : (row[k] ?? '')));
    return fittedWidth(column, cells, height) + BESIDE * height;
  };
  const fitted = columns.map(
    (column, k): Column => ({
      head: column.head,
      width: widthOf(column, k),
      ...(column.align ? { align: column.align } : {}),
    }),
  );
  const { marks } = layTable({ columns: fitted, rows, textHeight: height }, [0, 0]);
  const { scale } = style;
  return block(
    marks.map((mark) => moveMark(mark, ([x, y]) => [x * scale, y * scale], scale)),
    style,
  );
}
