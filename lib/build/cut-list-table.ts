import { marksText } from '../derive/cut-list/building-order.ts';
import { type CutList, type CutListRow, isFromOffcuts } from '../derive/cut-list/cut-list.ts';
import type { Size } from '../model/part.ts';
import { formatInches, formatMm, formatNumber, type UnitSystem } from '../units/format-length.ts';
import { speciesById } from '../wood/species-list.ts';
import type { TextColumn } from '../writers/table-text.ts';
import { roughSize } from './rough-size.ts';

/** A table as text cells: for a terminal and for CSV. */
export interface Table {
  readonly columns: readonly TextColumn[];
  readonly rows: readonly (readonly string[])[];
}

/** Finished sizes to the nearest 1/64 in or 0.1 mm; rough ones up to the next 1/16 in or mm, as lumber is measured. */
const finishedText = (mm: number, units: UnitSystem): string =>
  units === 'in' ? formatInches(mm, { mark: '' }) : formatMm(mm, 1, 'nearest', '');
const roughText = (mm: number, units: UnitSystem): string =>
  units === 'in' ? formatInches(mm, { denominator: 16, rounding: 'up', mark: '' }) : formatMm(mm, 0, 'up', '');

const sizes = ({ thickness, width, length }: Size, text: (mm: number) => string): string[] =>
  [thickness, width, length].map(text);

/** The class to buy; no board is thick enough for what must be glued up. */
const lumberText = (r: CutListRow): string => r.lumber ?? (isFromOffcuts(r) ? 'offcuts' : 'glue up');

const right = (head: string): TextColumn => ({ head, align: 'right' });

/** For reading: one line a row, sizes in the units of the papers. */
export function cutListTable(list: CutList, units: UnitSystem): Table {
  return {
    columns: [
      { head: 'part' },
      { head: 'name' },
      right('qty'),
      right(`T (${units})`),
      right('W'),
      right('L'),
      right('rough T'),
      right('W'),
      right('L'),
      { head: 'wood' },
      { head: 'lumber' },
      { head: 'notes' },
    ],
    rows: list.rows.map((r) => [
      marksText(r.marks),
      r.name,
      `${r.quantity}`,
      ...sizes(r.finished, (mm) => finishedText(mm, units)),
      ...sizes(r.rough, (mm) => roughText(mm, units)),
      speciesById(r.wood).name,
      lumberText(r),
      r.notes.join('; '),
    ]),
  };
}

/** The boards of a row, by the marks of its pieces: `P1 4; P2 4`. */
export type BoardsOfPieces = ReadonlyMap<string, string>;

/**
 * For spreadsheets: the same with both systems side by side, board feet, and the board of each piece where it is known. A rough
 * size is one size: rounded up in the units of the design, and told in both.
 */
export function cutListCsv(
  list: CutList,
  units: UnitSystem,
  boards?: BoardsOfPieces,
): { header: string[]; rows: string[][] } {
  const heads = (kind: string, unit: string): string[] =>
    ['thickness', 'width', 'length'].map((size) => `${kind} ${size} (${unit})`);
  return {
    header: [
      'part',
      'name',
      'quantity',
      ...heads('finished', 'in'),
      ...heads('rough', 'in'),
      'material',
      'lumber',
      ...(boards ? ['board'] : []),
      'board feet',
      'board feet rough',
      'notes',
      ...heads('finished', 'mm'),
      ...heads('rough', 'mm'),
    ],
    rows: list.rows.map((row) => csvRow(row, units, boards)),
  };
}

function csvRow(r: CutListRow, units: UnitSystem, boards?: BoardsOfPieces): string[] {
  const mm = (value: number): string => formatNumber(value, 3);
  const rough = (value: number): number => roughSize(value, units);
  return [
    marksText(r.marks),
    r.name,
    `${r.quantity}`,
    ...sizes(r.finished, (v) => finishedText(v, 'in')),
    ...sizes(r.rough, (v) => roughText(rough(v), 'in')),
    speciesById(r.wood).name,
    lumberText(r),
    ...(boards ? [boardText(r, boards)] : []),
    formatNumber(r.boardFeet, 3),
    formatNumber(r.boardFeetRough, 3),
    r.notes.join('; '),
    ...sizes(r.finished, mm),
    ...sizes(r.rough, (v) => mm(rough(v))),
  ];
}

const boardText = ({ marks }: CutListRow, boards: BoardsOfPieces): string =>
  marks.flatMap((mark) => (boards.has(mark) ? [`${mark} ${boards.get(mark)}`] : [])).join('; ');
