import type { Issue } from '../params/issue.ts';
import type { Fault } from '../params/reading.ts';

type Rest = Partial<Issue> & Pick<Issue, 'code'>;

/** An issue of a table of readings; `path` says where: `line 4, across`. */
export const inTable = (path: string, from: string, rest: Rest): Issue => ({
  path,
  from,
  given: '',
  unit: '',
  via: 'table',
  ...rest,
});

/** Where a cell stands. */
export const cellPath = (line: number, column: string): string => `line ${line}, ${column}`;

/** An issue from what is wrong with one cell. */
export function cellIssue(line: number, column: string, from: string, fault: Fault): Issue {
  const { tries, value: _, ...rest } = fault;
  return inTable(cellPath(line, column), from, { ...rest, try: tries[0] });
}
