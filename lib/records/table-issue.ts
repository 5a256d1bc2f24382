import type { Issue } from '../params/issue.ts';
import type { Fault } from '../params/reading.ts';
import type { UnitSystem } from '../units/format-length.ts';
import { tryIn } from './try-in.ts';

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

/** Which table an issue is of, and the units of its design: what is suggested is in these. */
export interface TableOf {
  readonly from: string;
  readonly units: UnitSystem;
}

/** An issue from what is wrong with one cell. */
export function cellIssue(line: number, column: string, { from, units }: TableOf, fault: Fault): Issue {
  const { tries, value: _, ...rest } = fault;
  return inTable(cellPath(line, column), from, { ...rest, try: tryIn(tries, units) });
}
