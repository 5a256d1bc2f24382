import type { Board } from '../model/records.ts';
import type { Issue } from '../params/issue.ts';
import { readLength } from '../params/read-length.ts';
import { readQuantity } from '../params/read-number.ts';
import { bad, good, type Reading } from '../params/reading.ts';
import type { UnitSystem } from '../units/format-length.ts';
import type { Mm } from '../units/mm.ts';
import { type RowReader, rowReader } from './cell.ts';
import { type CsvText, readCsv } from './csv.ts';
import { readDefects, readTone } from './read-defects.ts';
import { readOption } from './read-option.ts';
import { type ColumnPlaces, readColumns } from './table-columns.ts';
import { cellIssue, inTable, type TableOf } from './table-issue.ts';
import type { TableText } from './table-text.ts';

/** The boards at hand, or all that is wrong with the table. */
export type BoardsOutcome =
  | { readonly boards: readonly Board[]; readonly issues?: never }
  | { readonly issues: readonly Issue[]; readonly boards?: never };

const CORNERS = ['t1', 't2', 't3', 't4'] as const;
const COLUMNS = [
  'mark',
  'thickness',
  ...CORNERS,
  'width',
  'length',
  'moisture',
  'bark',
  'tone',
  'defects',
  'price',
] as const;
type Column = (typeof COLUMNS)[number];

const SPEC = {
  all: COLUMNS,
  needed: ['mark', 'width', 'length'],
  either: { names: ['thickness', ...CORNERS], words: 'thickness or the four corners t1, t2, t3, t4' },
} as const;

const length =
  (min: Mm, max: Mm, what: string) =>
  (text: string): Reading<Mm> =>
    readLength({ min, max, because: `no board is ${what} than that` }, text);

const EXAMPLE = {
  thickness: { in: '2 in', mm: '50 mm' },
  width: { in: '5 1/2 in', mm: '140 mm' },
  length: { in: '88 in', mm: '2240 mm' },
} as const;

// Limits that only a slip of the pen passes: our convention.
const READ = {
  thickness: length(3, 160, 'thinner or thicker'),
  width: length(20, 1200, 'narrower or wider'),
  length: length(100, 7000, 'shorter or longer'),
  moisture: (text: string): Reading<number> => quantity('%', 60, text),
  price: (text: string): Reading<number> => quantity('', 100_000, text),
};

const quantity = (unit: string, max: number, text: string): Reading<number> =>
  readQuantity({ kind: 'quantity', label: '', unit, default: 0, min: 0, max, because: '' } as never, text);

/**
 * Reads `boards.csv`, a row a board as measured after milling:
 *
 *     mark, thickness, width, length, moisture, bark, tone, defects, price
 *     1, 2 5/16 in, 5 3/8 in, 88 in, 7.5 %, A, light, knot 10 in..14 in x 1 in..2 in face A 1/4 in deep, 64
 *
 * Thickness is the least; in its place may stand the corners t1 and t2 (reference end, near and far edge), t3 and t4 (far
 * end). Only mark, thickness, width and length must be there. Everything wrong is told at once.
 */
export function readBoards({ text, from }: TableText, units: UnitSystem): BoardsOutcome {
  const table = readCsv(text);
  const broken = (path: string, because: string): Issue => inTable(path, from, { code: 'broken-table', because });
  const issues: Issue[] = table.faults.map(({ line, because }) => broken(`line ${line}`, because));
  if (!table.header) issues.push(broken('the table', 'there is no row in it that names the columns'));
  const boards = boardsOf(table, { from, units }, issues);
  return issues.length > 0 ? { issues } : { boards };
}

function boardsOf({ header, rows }: CsvText, table: TableOf, issues: Issue[]): Board[] {
  if (!header) return [];
  const { from } = table;
  const { places, meant, issues: named } = readColumns<Column>(header, SPEC, from);
  const wrong = [...named, ...thicknessColumns(places, meant, `line ${header.line}`, from)];
  issues.push(...wrong);
  // A column too many keeps nobody from reading the others.
  const known = SPEC.needed.every((name) => places.has(name));
  if (!known || places.has('thickness') === CORNERS.every((name) => places.has(name))) return [];
  const columns = { ...table, places, count: header.cells.length };
  const marks = new Map<string, number>();
  return rows.flatMap((row): Board[] => {
    const before = issues.length;
    const board = boardOf(rowReader(row, columns, issues), places.has('t1'), marks, table, issues);
    return board && issues.length === before ? [board] : [];
  });
}

/** The thickness of a board, within what boards can be. */
export const readThickness = (text: string): Reading<Mm> => READ.thickness(text);

/** Thickness once: the least, or the four corners. */
function thicknessColumns(
  places: ColumnPlaces<Column>,
  meant: ReadonlySet<string>,
  path: string,
  from: string,
): Issue[] {
  const corners = CORNERS.filter((name) => places.has(name));
  const one = places.has('thickness');
  if (one && corners.length > 0) {
    const because = 'thickness and t1 to t4 say the same thing twice; keep one or the others';
    return [inTable(path, from, { code: 'broken-table', because })];
  }
  if (one || meant.has('thickness') || corners.length === CORNERS.length) return [];
  if (corners.length === 0) {
    const because = 'or the four columns t1, t2, t3 and t4 for the corners';
    return [inTable('thickness', from, { code: 'missing-column', because })];
  }
  const missing = CORNERS.filter((name) => !places.has(name) && !meant.has(name));
  const because = 'thickness is measured at one place or at all four corners';
  return missing.map((name) => inTable(name, from, { code: 'missing-column', because }));
}

function boardOf(
  cells: RowReader<Column>,
  byCorners: boolean,
  marks: Map<string, number>,
  table: TableOf,
  issues: Issue[],
): Board | undefined {
  const mark = cells.need('mark', (text) => readMark(text, marks), '1');
  if (mark !== undefined && !marks.has(mark)) marks.set(mark, cells.line);
  const corners = byCorners ? CORNERS.map((name) => cells.need(name, READ.thickness, EXAMPLE.thickness)) : undefined;
  const least = corners
    ? Math.min(...corners.map((t) => t ?? Number.NaN))
    : cells.need('thickness', READ.thickness, EXAMPLE.thickness);
  const width = cells.need('width', READ.width, EXAMPLE.width);
  const long = cells.need('length', READ.length, EXAMPLE.length);
  const moisture = cells.may('moisture', READ.moisture);
  const bark = cells.may('bark', (text): Reading<'A' | 'B'> => readOption(['A', 'B'], text));
  const tone = cells.may('tone', readTone);
  const price = cells.may('price', READ.price);
  // A defect is judged by the size of its board; where that is wrong, by the greatest there may be.
  const size = { length: long ?? 7000, width: width ?? 1200, thickness: least || 160 };
  const { defects, faults } = readDefects(cells.text('defects'), size);
  issues.push(...faults.map((fault) => cellIssue(cells.line, 'defects', table, fault)));
  if (mark === undefined || least === undefined || width === undefined || long === undefined) return undefined;
  return {
    row: cells.line,
    mark,
    thickness: least,
    ...(corners ? { corners: corners as [Mm, Mm, Mm, Mm] } : {}),
    width,
    length: long,
    ...(moisture === undefined ? {} : { moisture }),
    ...(bark === undefined ? {} : { bark }),
    ...(tone === undefined ? {} : { tone }),
    defects,
    ...(price === undefined ? {} : { price }),
  };
}

const MARK = /^[\p{L}\p{N}][\p{L}\p{N} ./-]{0,11}$/u;

function readMark(text: string, marks: ReadonlyMap<string, number>): Reading<string> {
  if (!MARK.test(text)) {
    const expected = 'what is pencilled on the wood: up to 12 letters and figures';
    return bad({ code: 'unreadable', given: text, expected });
  }
  const first = marks.get(text);
  if (first === undefined) return good(text, text);
  return bad({ code: 'repeated', given: `on line ${first} and here`, because: undefined });
}
