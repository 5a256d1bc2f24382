import { type Block, block } from '../../../drawing/block.ts';
import { roomFor } from '../../../drawing/fit-text.ts';
import { layTable } from '../../../drawing/lay-table.ts';
import { moveMark } from '../../../drawing/place.ts';
import type { Style } from '../../../drawing/style.ts';
import type { Column, TableRow } from '../../../drawing/table.ts';
import type { Mm } from '../../../units/mm.ts';

/** A column that is as wide as its widest text, or `most` paper mm, where longer text is broken. */
export interface FittedColumn {
  readonly head: string;
  readonly align?: Column['align'];
  readonly most?: Mm;
}

/** Beside the text of a cell, in capital heights, both sides together. */
const BESIDE = 1.4;

/** A table whose columns fit their text in any usual face; letters of `height` paper mm, the upper left corner is the origin. */
export function tableBlock(
  columns: readonly FittedColumn[],
  rows: readonly TableRow[],
  height: Mm,
  style: Style,
): Block {
  const widthOf = ({ head, most = Infinity }: FittedColumn, k: number): Mm => {
    const cells = rows.map((row) => ('band' in row ? 0 : roomFor(row[k] ?? '', height)));
    return Math.min(most, Math.max(roomFor(head, height, true), ...cells) + BESIDE * height);
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
