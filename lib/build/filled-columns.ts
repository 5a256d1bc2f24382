import type { Table } from './cut-list-table.ts';

/** A table without the columns that have nothing in them, for a narrow screen. */
export function filledColumns({ columns, rows }: Table): Table {
  const kept = columns.map((_, k) => rows.some((cells) => cells[k]));
  return {
    columns: columns.filter((_, k) => kept[k]),
    rows: rows.map((cells) => cells.filter((_, k) => kept[k])),
  };
}
