import type { Milled } from '../derive/lumber/milled-boards.ts';
import type { Board } from '../model/records.ts';
import { parseAssignment } from '../params/assignment.ts';
import type { Issue } from '../params/issue.ts';
import { readThickness } from '../records/read-boards.ts';
import { tryIn } from '../records/try-in.ts';
import type { UnitSystem } from '../units/format-length.ts';

/** The option that says it. */
const OPTION = '--milled';

/** Boards as they came out, or all that is wrong with what was said of them. */
export type MilledOutcome =
  | { readonly milled: readonly Milled[]; readonly issues?: never }
  | { readonly issues: readonly Issue[]; readonly milled?: never };

/**
 * Boards that came out of milling otherwise than in the table, from texts such as `5=1 3/4 in`: mark and thickness.
 *
 * @param boards those of the table; without them it is not asked whether they are there.
 */
export function readMilled(texts: readonly string[], units: UnitSystem, boards?: readonly Board[]): MilledOutcome {
  const issues: Issue[] = [];
  const milled: Milled[] = [];
  const first = new Map<string, string>();
  for (const text of texts) {
    const { override, issue } = parseAssignment(text, OPTION);
    if (!override) {
      issues.push(issue);
      continue;
    }
    const mark = override.path;
    const about = { path: `board ${mark}`, from: override.from, via: OPTION, unit: '' } as const;
    const given = override.text.trim();
    const { value, faults = [] } = readThickness(given);
    issues.push(
      ...faults.map(({ tries, value: _, ...rest }) => ({ ...about, ...rest, try: tryIn(tries, units) ?? TRY[units] })),
    );
    if (first.has(mark)) issues.push({ ...about, code: 'repeated', given: `${first.get(mark)} and ${given}` });
    else if (boards && !boards.some((board) => board.mark === mark))
      issues.push(unknownBoard(mark, about.from, boards));
    else if (value !== undefined) milled.push({ mark, thickness: value });
    first.set(mark, given);
  }
  return issues.length > 0 ? { issues } : { milled };
}

const TRY = { in: '1 3/4 in', mm: '44 mm' } as const;

const unknownBoard = (given: string, from: string, boards: readonly Board[]): Issue => ({
  code: 'not-an-option',
  path: `the board of ${OPTION}`,
  given,
  from,
  unit: '',
  via: OPTION,
  options: boards.map(({ mark }) => mark),
  because: 'no other boards are in boards.csv',
});
