import type { Sheet } from '../../drawing/tile-grid.ts';

/** Paper of an office printer, upright. */
export interface PrintPaper extends Sheet {
  /** As it stands at the end of a file name. */
  readonly name: 'letter' | 'a4';
}

/** ANSI/ASME Y14.1 size A; ISO 216. */
export const PRINT_PAPERS: readonly PrintPaper[] = [
  { name: 'letter', width: 215.9, height: 279.4 },
  { name: 'a4', width: 210, height: 297 },
];
