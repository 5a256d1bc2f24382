import type { Mm } from '../units/mm.ts';

/** A column of a table on paper. */
export interface Column {
  readonly head: string;
  /** mm on paper, gaps beside the text included. */
  readonly width: Mm;
  /** `left` when left out. */
  readonly align?: 'left' | 'center' | 'right';
  /** What happens to text that is too long: more lines (when left out), or smaller letters if that is enough. */
  readonly long?: 'wrap' | 'shrink';
}

/** A row of cells, one a column, empty where they are missing; or words in bold across all columns. */
export type TableRow = readonly string[] | { readonly band: string };

/** Lettering with a grid; paper mm. */
export interface Table {
  readonly columns: readonly Column[];
  readonly rows: readonly TableRow[];
  /** Height of a capital. */
  readonly textHeight: Mm;
}

export const widthOf = ({ columns }: Table): Mm => columns.reduce((sum, { width }) => sum + width, 0);
