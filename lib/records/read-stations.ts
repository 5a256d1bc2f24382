import type { MeasuredUnderside, Station } from '../model/records.ts';
import type { Issue } from '../params/issue.ts';
import { readLength } from '../params/read-length.ts';
import type { Reading } from '../params/reading.ts';
import type { UnitSystem } from '../units/format-length.ts';
import type { Mm } from '../units/mm.ts';
import { type RowReader, rowReader } from './cell.ts';
import { type CsvText, readCsv } from './csv.ts';
import { readDate } from './read-date.ts';
import { readOption } from './read-option.ts';
import { type ColumnsRead, readColumns } from './table-columns.ts';
import { inTable, type TableOf } from './table-issue.ts';
import type { TableText } from './table-text.ts';

/** What the readings are of: the top as designed. */
export interface TopSize {
  readonly length: Mm;
  readonly width: Mm;
  /** mm, the greatest. */
  readonly thickness: Mm;
  /** mm from the floor to the show face; absent when the piece does not stand. */
  readonly height?: Mm;
}

/** What was measured, or all that is wrong with the table. */
export type StationsOutcome =
  | { readonly underside: MeasuredUnderside; readonly issues?: never }
  | { readonly issues: readonly Issue[]; readonly underside?: never };

const COLUMNS = ['along', 'across', 'side', 'thickness', 'height'] as const;
type Column = (typeof COLUMNS)[number];
type Kind = 'thickness' | 'height';

const SPEC = {
  all: COLUMNS,
  needed: ['along', 'across'],
  either: { names: ['thickness', 'height'], words: 'thickness or height' },
  instead: { date: 'the day stands in a line of its own above the columns: # date: 2026-11-25' },
} as const;

const EXAMPLE = {
  along: { in: '14 in', mm: '350 mm' },
  across: { in: '10 in', mm: '250 mm' },
  thickness: { in: '1 3/8 in', mm: '35 mm' },
  height: { in: '28 1/8 in', mm: '715 mm' },
} as const;

/** Beyond the edge of the top by more than this a reading is a slip of the pen, mm (our convention). */
const OVER: Mm = 1;

/** No top is so many times as thick as drawn: beyond it a reading is a slip of the pen (our convention). */
const MOST = 2;

/**
 * Reads `stations.csv`, the underside as measured after the taper:
 *
 *     # date: 2026-11-25
 *     along, across, thickness
 *     14 in, -10 in, 1 11/16 in
 *
 * `along` from the reference end; `across` from the center line, minus to the left as the table stands and is seen from the
 * reference end, or without a sign beside a column `side` that says left or right; and either `thickness`, square to the
 * show face, or `height` of the underside over the floor. Every length says its unit. Everything wrong is told at once.
 */
export function readStations({ text, from }: TableText, top: TopSize, units: UnitSystem): StationsOutcome {
  const table = readCsv(text);
  const broken = (path: string, because: string): Issue => inTable(path, from, { code: 'broken-table', because });
  const issues: Issue[] = table.faults.map(({ line, because }) => broken(`line ${line}`, because));
  const date = readDate(table, from, issues);
  if (!table.header) issues.push(broken('the table', 'there is no row in it that names the columns'));
  const stations = stationsOf(table, top, { from, units }, issues);
  return issues.length > 0 || date === undefined ? { issues } : { underside: { date, stations } };
}

function stationsOf({ header, rows }: CsvText, top: TopSize, table: TableOf, issues: Issue[]): Station[] {
  if (!header) return [];
  const { from } = table;
  const { places, meant, issues: named } = readColumns<Column>(header, SPEC, from);
  const wrong = [...named];
  const kind = kindOf({ places, meant }, `line ${header.line}`, top, from, wrong);
  issues.push(...wrong);
  // A column too many keeps nobody from reading the others.
  const known = SPEC.needed.every((name) => places.has(name));
  if (!kind || !known || wrong.some(({ code }) => code === 'broken-table')) return [];
  const columns = { ...table, places, count: header.cells.length };
  return rows.flatMap((row): Station[] => {
    const before = issues.length;
    const station = stationOf(rowReader(row, columns, issues), kind, places.has('side'), top);
    return station && issues.length === before ? [station] : [];
  });
}

/** Which of the two was measured; there must be one. */
function kindOf(
  { places, meant }: Pick<ColumnsRead<Column>, 'places' | 'meant'>,
  path: string,
  { height }: TopSize,
  from: string,
  issues: Issue[],
): Kind | undefined {
  const given = (['thickness', 'height'] as const).filter((name) => places.has(name));
  const wrong = (code: Issue['code'], where: string, because: string): void => {
    issues.push(inTable(where, from, { code, because }));
  };
  if (given.length === 0 && !SPEC.either.names.some((name) => meant.has(name))) {
    wrong('missing-column', 'thickness', 'or a column height, of the underside over the floor');
  }
  if (given.length === 2)
    wrong('broken-table', path, 'thickness and height say the same thing twice; keep one of them');
  if (given[0] === 'height' && height === undefined) {
    wrong('broken-table', `${path}, height`, 'this piece does not stand on a floor; measure the thickness');
  }
  return given[0];
}

function stationOf(cells: RowReader<Column>, kind: Kind, bySide: boolean, top: TopSize): Station | undefined {
  const along = cells.need('along', lengthIn(-OVER, top.length + OVER, 'the top ends there'), EXAMPLE.along);
  const half = top.width / 2 + OVER;
  const signed = bySide ? 'the column side says which way' : 'the top ends there';
  const across = cells.need('across', lengthIn(bySide ? 0 : -half, half, signed), EXAMPLE.across);
  const side = bySide ? sideOf(cells, across) : undefined;
  const value = kind === 'thickness' ? thicknessOf(cells, top) : heightOf(cells, top);
  if (along === undefined || across === undefined || value === undefined) return undefined;
  const sign = side === 'left' ? -1 : 1;
  return { row: cells.line, along, across: sign * across + 0, thickness: value, ...(side ? { side } : {}) };
}

const thicknessOf = (cells: RowReader<Column>, { thickness }: TopSize): Mm | undefined =>
  cells.need('thickness', lengthIn(1, MOST * thickness, 'it is drawn half as thick at most'), EXAMPLE.thickness);

function heightOf(cells: RowReader<Column>, { thickness, height = 0 }: TopSize): Mm | undefined {
  const read = lengthIn(height - MOST * thickness, height - 1, 'the top is above it, and drawn half as thick at most');
  const value = cells.need('height', read, EXAMPLE.height);
  return value === undefined ? undefined : height - value;
}

const lengthIn =
  (min: Mm, max: Mm, because: string) =>
  (text: string): Reading<Mm> =>
    readLength({ min, max, because }, text);

/** Which way a distance goes; on the center line none need be said, and a reading then counts for both halves. */
function sideOf(cells: RowReader<Column>, across: Mm | undefined): 'left' | 'right' | undefined {
  const read = (text: string): Reading<'left' | 'right'> => readOption(['left', 'right'], text);
  return across === 0 ? cells.may('side', read) : cells.need('side', read, 'left');
}
