import type { Issue } from '../params/issue.ts';
import type { CsvText } from './csv.ts';
import { isDay } from './day.ts';
import { cellPath, inTable } from './table-issue.ts';

const NAMED = /^date\b/i;
const DATED = /^date *: *(.+)$/i;

/** How the day is written, for messages. */
const EXAMPLE = '# date: 2026-11-25';

/** The day of measuring, from its line `# date: 2026-11-25` above the columns; what is wrong with it is gathered. */
export function readDate({ remarks, header }: CsvText, from: string, issues: Issue[]): string | undefined {
  const [first, second] = remarks.filter(({ cells }) => NAMED.test(cells[0]!));
  const wrong = (path: string, rest: Partial<Issue>): undefined => {
    issues.push(inTable(path, from, { code: 'wrong-type', try: EXAMPLE, ...rest }));
  };
  if (!first) {
    const because = 'the day of measuring stands above the columns';
    return wrong('the date', { given: 'missing', expected: 'a line of its own', because });
  }
  const path = cellPath(first.line, 'date');
  const date = DATED.exec(first.cells[0]!)?.[1]?.trim() ?? '';
  if (second) return wrong(cellPath(second.line, 'date'), { given: 'the second one', expected: 'there once' });
  if (!isDay(date)) return wrong(path, { given: JSON.stringify(date), expected: 'a day written YYYY-MM-DD' });
  if (header && first.line > header.line) return wrong(path, { given: 'below', expected: 'above the columns' });
  return date;
}
