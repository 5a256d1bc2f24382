import type { Mm } from '../units/mm.ts';
import type { Mark, Pt } from './entity.ts';
import { type LaidRow, layRow, rowText } from './lay-row.ts';
import { LAYERS } from './layers.ts';
import { type Table, type TableRow, widthOf } from './table.ts';

/** As much of a table as found room. */
interface LaidTable {
  readonly marks: readonly Mark[];
  /** mm from the upper edge of the head to the lower edge of the last row; 0 when nothing found room. */
  readonly height: Mm;
  /** The rows that found none; to be laid elsewhere, under the same head. */
  readonly rest?: Table;
}

const isBand = (row: TableRow): row is { readonly band: string } => 'band' in row;

function laid(table: Table, row: TableRow): LaidRow {
  const { columns, textHeight } = table;
  if (!isBand(row)) return layRow(columns, row, textHeight, false);
  return layRow([{ head: '', width: widthOf(table) }], [row.band], textHeight, true);
}

/** How many rows find room below the head; a band does not stand last, with what it heads on the next sheet. */
function countThatFits(table: Table, head: LaidRow, rows: readonly LaidRow[], room: Mm): number {
  let height = head.height;
  let count = 0;
  while (count < rows.length && height + rows[count]!.height <= room + 1e-9) {
    height += rows[count]!.height;
    count++;
  }
  if (count === rows.length) return count;
  while (count > 0 && isBand(table.rows[count - 1]!)) count--;
  return count;
}

/**
 * A table with its upper left corner at `at`, no higher than `room`.
 *
 * ```
 *   at +--------+------+     head, bold, repeated where the table goes on
 *      +--------+------+
 *      | band          |
 *      | cell   | cell |
 * ```
 */
export function layTable(table: Table, at: Pt, room: Mm = Infinity): LaidTable {
  const { columns, textHeight } = table;
  const head = layRow(
    columns,
    columns.map((column) => column.head),
    textHeight,
    true,
  );
  const rows = table.rows.map((row) => laid(table, row));
  const count = countThatFits(table, head, rows, room);
  if (count === 0 && rows.length > 0) return { marks: [], height: 0, rest: table };
  const marks: Mark[] = [];
  let y = at[1];
  for (const row of [head, ...rows.slice(0, count)]) {
    marks.push(...rowText(row, [at[0], y], textHeight));
    marks.push(...rules(row, [at[0], y]));
    y -= row.height;
  }
  marks.push(line([at[0], y], [at[0] + widthOf(table), y]));
  const height = at[1] - y;
  return count === rows.length
    ? { marks, height }
    : { marks, height, rest: { ...table, rows: table.rows.slice(count) } };
}

const line = (from: Pt, to: Pt): Mark => ({ kind: 'poly', layer: LAYERS.RULE, points: [from, to], closed: false });

/** The line over a row and the lines beside its cells. */
function rules({ cells, height }: LaidRow, [left, top]: Pt): Mark[] {
  let x = left;
  const upright = cells.map(({ column }) => {
    x += column.width;
    return line([x, top], [x, top - height]);
  });
  return [line([left, top], [x, top]), line([left, top], [left, top - height]), ...upright];
}

/**
 * A table over as many sheets as it needs: `rooms` is asked for the place on each in turn, 0 being the first.
 *
 * @throws RangeError when a row finds no room on a whole sheet.
 */
export function tableOverPages(
  table: Table,
  rooms: (sheet: number) => { readonly at: Pt; readonly room: Mm },
): readonly LaidTable[] {
  const parts: LaidTable[] = [];
  for (let rest: Table | undefined = table; rest; rest = parts.at(-1)!.rest) {
    const { at, room } = rooms(parts.length);
    const part = layTable(rest, at, room);
    if (part.height === 0 && parts.length > 0) {
      throw new RangeError(
        `a row of the table is higher than the ${room} mm of a sheet: ${JSON.stringify(rest.rows[0])}`,
      );
    }
    parts.push(part);
  }
  return parts;
}
