import { tableText, type WhatIfTable } from 'tablewright';
import { type Paint, VERDICT_STYLE } from './paint.ts';
import { wrapped } from './wrapped.ts';

/** Wider tables are cut into several below each other. */
const WIDTH = 120;

/** Unless all is asked for, what is ok throughout gets no more tables than this. */
const MOST_TABLES = 2;

/** The table of a what-if, in as many pieces as its width needs, with its legend. */
export function whatIfText(table: WhatIfTable, all: boolean, paint: Paint): string {
  const pieces = cutToWidth(table);
  const kept = pieces.filter((columns, k) => all || k < MOST_TABLES || columns.some((c) => table.brief[c] === ''));
  const left = pieces.filter((piece) => !kept.includes(piece)).flat();
  return [
    kept.map((columns) => pieceText(table, columns, paint)).join('\n\n'),
    '',
    ...legend(table),
    ...list(
      'changing, but ok throughout',
      left.map((k) => table.brief[k]!),
      '; ',
    ),
    ...list('the same throughout', table.unchanged, '; '),
  ].join('\n');
}

/** Which columns stand in each piece. */
function cutToWidth({ lead, columns, rows }: WhatIfTable): number[][] {
  const before = tableText(
    lead,
    rows.map((row) => row.lead),
  ).split('\n');
  const start = Math.max(...before.map((line) => line.length));
  const pieces: number[][] = [[]];
  let width = start;
  for (const [k, column] of columns.entries()) {
    const cells = [...column.head.split('\n'), ...rows.map((row) => row.cells[k] ?? '')];
    const more = 2 + Math.max(...cells.map((cell) => cell.length));
    if (width + more > WIDTH && pieces.at(-1)!.length > 0) {
      pieces.push([]);
      width = start;
    }
    pieces.at(-1)!.push(k);
    width += more;
  }
  return pieces;
}

function pieceText({ lead, columns, rows }: WhatIfTable, shown: readonly number[], paint: Paint): string {
  const heads = [...lead, ...shown.map((k) => columns[k]!)];
  const cells = rows.map((row) => [...row.lead, ...shown.map((k) => row.cells[k] ?? '')]);
  const lines = tableText(heads, cells).split('\n');
  const first = lines.length - rows.length;
  return lines
    .map((line, k) => {
      const row = rows[k - first];
      if (!row) return line.trimEnd();
      const verdict = row.lead.at(-1)!;
      if (row.refused !== undefined) return `${line.trimEnd()}: ${row.refused}`;
      return line.replace(verdict, paint(VERDICT_STYLE[verdict as keyof typeof VERDICT_STYLE], verdict));
    })
    .join('\n');
}

function legend({ rows }: WhatIfTable): string[] {
  const now = rows.some(({ lead }) => lead[0] !== '') ? '; * the design as it is' : '';
  return [`C change it, L look again, N not checked, no letter: ok${now}`];
}

const list = (what: string, items: readonly string[], between: string): string[] =>
  items.length > 0 ? wrapped(`${what}: ${items.join(between)}`, '') : [];
