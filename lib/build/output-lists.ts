import { csv } from '../writers/csv.ts';
import { json } from '../writers/json.ts';
import { billTable } from './bill-table.ts';
import { cutListCsv } from './cut-list-table.ts';
import type { Job } from './job.ts';
import { type Files, textFile } from './output.ts';

export function listFiles(job: Job): Files {
  const { title, revision, date, units } = job.design;
  const list = cutListCsv(job.cutList);
  const bill = billTable(job.bill, units);
  const head = { schema: 1, title, revision, date };
  return new Map([
    ['cut-list.csv', textFile(csv(list.header, list.rows))],
    ['cut-list.json', textFile(json({ ...head, ...job.cutList }))],
    [
      'bill-of-materials.csv',
      textFile(
        csv(
          bill.columns.map((c) => c.head),
          bill.rows,
        ),
      ),
    ],
    ['bill-of-materials.json', textFile(json({ ...head, ...job.bill }))],
  ]);
}
