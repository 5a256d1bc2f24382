import type { Table } from './cut-list-table.ts';

/** A stretch of the report on lumber: a heading, sentences, and a table when there is one. */
export interface LumberSection {
  readonly title: string;
  readonly lines: readonly string[];
  readonly table?: Table;
}
