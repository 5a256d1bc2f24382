import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const FILE = fileURLToPath(new URL('../../designs/reading-table/boards.csv', import.meta.url));

/** The table of the demo pile without some boards, and with more rows. */
export function pileWithout(marks: readonly string[], more: readonly string[] = []): string {
  const rows = readFileSync(FILE, 'utf8').trimEnd().split('\n');
  return [...rows.filter((row) => !marks.includes(row.split(',')[0]!)), ...more].join('\n');
}
