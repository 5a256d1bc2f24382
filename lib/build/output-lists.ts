import { csv } from '../writers/csv.ts';
import { json } from '../writers/json.ts';
import { billTable } from './bill-table.ts';
import { boardsOfPieces } from './boards-of-pieces.ts';
import { cutListCsv } from './cut-list-table.ts';
import { forcedField, SPITE } from './forced.ts';
import type { Job } from './job.ts';
import { paperPlan } from './lumber-plan.ts';
import { type Files, textFile } from './output.ts';

export async function listFiles(job: Job): Promise<Files> {
  const { title, revision, date, units } = job.design;
  const boards = job.records.boards ? boardsOfPieces(await paperPlan(job), job.nominal) : undefined;
  const list = cutListCsv(job.cutList, units, boards);
  const bill = billTable(job.bill, units);
  const head = { schema: 1, title, revision, date, ...forcedField(job) };
  const warning = job.forced.length > 0 ? SPITE : undefined;
  return new Map([
    ['cut-list.csv', textFile(csv(list.header, marked(list.rows, list.header.indexOf('notes'), warning)))],
    ['cut-list.json', textFile(json({ ...head, ...job.cutList }))],
    [
      'bill-of-materials.csv',
      textFile(
        csv(
          bill.columns.map((c) => c.head),
          marked(bill.rows, bill.columns.length - 1, warning),
        ),
      ),
    ],
    ['bill-of-materials.json', textFile(json({ ...head, ...job.bill }))],
  ]);
}

/** Rows with a warning in their column for remarks: in each of them, since a spreadsheet sorts and picks rows. */
function marked(
  rows: readonly (readonly string[])[],
  column: number,
  warning: string | undefined,
): readonly (readonly string[])[] {
  if (warning === undefined) return rows;
  return rows.map((cells) =>
    cells.map((cell, k) => (k === column ? [warning, cell].filter(Boolean).join('; ') : cell)),
  );
}
