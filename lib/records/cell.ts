import type { Issue } from '../params/issue.ts';
import type { Reading } from '../params/reading.ts';
import type { UnitSystem } from '../units/format-length.ts';
import type { CsvRow } from './csv.ts';
import type { ColumnPlaces } from './table-columns.ts';
import { cellIssue, cellPath, inTable, type TableOf } from './table-issue.ts';

/** What could stand in an empty cell: the same in every design, or by its units. */
export type Example = string | { readonly [U in UnitSystem]: string };

/** The cells of one row by the names of their columns; what is wrong with them is gathered. */
export interface RowReader<C extends string> {
  readonly line: number;
  /** The text; empty when the column is not there. */
  text(column: C): string;
  /** The value of a cell that must not be empty; undefined when something is wrong with it. */
  need<V extends string | number | boolean>(
    column: C,
    read: (text: string) => Reading<V>,
    example: Example,
  ): V | undefined;
  /** The same of a cell that may be empty. */
  may<V extends string | number | boolean>(column: C, read: (text: string) => Reading<V>): V | undefined;
}

/** Reads the cells of a row; a row with more cells than columns is told, too. */
export function rowReader<C extends string>(
  row: CsvRow,
  columns: TableOf & { readonly places: ColumnPlaces<C>; readonly count: number },
  issues: Issue[],
): RowReader<C> {
  const { line, cells } = row;
  const { places, count, from, units } = columns;
  const extra = cells.slice(count).filter(Boolean);
  if (extra.length > 0) {
    const because = `it has more cells than there are columns: ${extra.join(', ')}; put a text with a comma in quotes`;
    issues.push(inTable(`line ${line}`, from, { code: 'broken-table', because }));
  }
  const text = (column: C): string => cells[places.get(column) ?? -1] ?? '';
  const take = <V extends string | number | boolean>(column: C, read: (text: string) => Reading<V>): V | undefined => {
    const { value, faults = [] } = read(text(column));
    issues.push(...faults.map((fault) => cellIssue(line, column, columns, fault)));
    return value as V | undefined;
  };
  return {
    line,
    text,
    need(column, read, example) {
      if (text(column) !== '') return take(column, read);
      const expected = 'filled in';
      const shown = typeof example === 'string' ? example : example[units];
      issues.push(inTable(cellPath(line, column), from, { code: 'wrong-type', given: 'empty', expected, try: shown }));
      return undefined;
    },
    may: (column, read) => (text(column) === '' ? undefined : take(column, read)),
  };
}
