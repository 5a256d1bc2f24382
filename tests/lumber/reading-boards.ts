import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import design from '../../designs/reading-table/design.ts';
import shop from '../../designs/shop.ts';
import { type Job, makeJob } from '../../lib/build/job.ts';
import { readRecords } from '../../lib/build/read-records.ts';
import { readValues } from '../../lib/params/read-values.ts';

const FILE = fileURLToPath(new URL('../../designs/reading-table/boards.csv', import.meta.url));

/** The reading table with the boards of its demo pile, in the shop of the demo. */
export function readingWithBoards(text = readFileSync(FILE, 'utf8')): Job {
  const values = readValues(design.params, design.values).values!;
  const { records, issues } = readRecords(design, values, { boards: { text, from: 'boards.csv' } });
  if (!records) throw new Error(JSON.stringify(issues));
  return makeJob(design, values, shop, records);
}
