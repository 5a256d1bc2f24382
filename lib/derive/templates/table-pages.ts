import type { Mark } from '../../drawing/entity.ts';
import { layTable, tableOverPages } from '../../drawing/lay-table.ts';
import type { Page } from '../../drawing/page.ts';
import { printSheet, textMark } from '../../drawing/print-sheet.ts';
import { type Table, widthOf } from '../../drawing/table.ts';
import { windowOn } from '../../drawing/tile-grid.ts';
import { wrapText } from '../../drawing/wrap-text.ts';
import type { Heading } from './heading.ts';
import { nameLine, noteLines, revisionLine } from './note-lines.ts';
import { offsetTable, type WordedTable } from './offset-table.ts';
import { placeTable } from './place-table.ts';
import type { PrintPaper } from './print-papers.ts';
import type { TemplateFace } from './template-face.ts';

/**
 * Height of letters, and from one line to the next; paper mm; 2.5 is of the series of ISO 3098-1, the pitch our
 * convention.
 */
const SIZE = 2.5;
const PITCH = 4.2;

/** Pages that are filled from above. */
interface Flow {
  readonly pages: Mark[][];
  /** Height that is left on the last page, counted from its lower border. */
  y: number;
}

/** From the upper border of a page to its first line, paper mm; our convention. */
const HEAD = 6;

/** Notes, offsets and places of a template: as many sheets as they take, a table whole on one where it has room. */
export function tablePages(face: TemplateFace, paper: PrintPaper, heading: Heading): readonly Page[] {
  const { min, max } = windowOn(paper);
  const wide = max[0] - min[0];
  const flow: Flow = { pages: [[]], y: max[1] - HEAD };
  const turn = (): void => {
    flow.pages.push([]);
    flow.y = max[1] - HEAD;
  };
  const put = (line: string, bold = false): void => {
    for (const text of wrapText(line, wide, SIZE, bold)) {
      if (flow.y < min[1] + PITCH) turn();
      flow.pages.at(-1)!.push(textMark(text, [min[0], flow.y], SIZE, bold ? { bold } : {}));
      flow.y -= PITCH;
    }
  };
  const putTable = ({ title, table: wish, foot }: WordedTable): void => {
    const table = narrowed(wish, wide);
    const lines = foot.flatMap((line) => wrapText(line, wide, SIZE));
    // A few rows on a sheet of their own are overlooked.
    const below = lines.length > 0 ? (1 + lines.length) * PITCH + SIZE / 2 : 0;
    const need = PITCH - SIZE + layTable(table, [0, 0]).height + below;
    if (need > flow.y - min[1] && need <= max[1] - HEAD - min[1]) turn();
    put(title, true);
    const first = flow.pages.length - 1;
    const parts = tableOverPages(table, (sheet) => {
      if (sheet > 0) turn();
      const top = flow.y + SIZE;
      return { at: [min[0], top], room: top - min[1] };
    });
    for (const [k, { marks }] of parts.entries()) flow.pages[first + k]!.push(...marks);
    flow.y -= parts.at(-1)!.height + PITCH - SIZE / 2;
    for (const line of foot) put(line);
    flow.y -= PITCH;
  };
  put('Notes', true);
  for (const line of noteLines(face, heading)) put(line);
  flow.y -= PITCH;
  putTable(offsetTable(face.outlines, heading.units, SIZE));
  if (face.pockets.length > 0) putTable(placeTable(face, heading.units, SIZE));
  return flow.pages.map((marks, k) =>
    printSheet(
      paper,
      flow.pages.length > 1 ? `Tables ${k + 1}` : 'Tables',
      [nameLine(face), revisionLine(heading)],
      marks,
    ),
  );
}

/** Columns no wider together than there is room. */
function narrowed(table: Table, room: number): Table {
  const share = Math.min(1, room / widthOf(table));
  return { ...table, columns: table.columns.map((column) => ({ ...column, width: column.width * share })) };
}
