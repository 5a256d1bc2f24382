import type { Assembly } from '../model/assembly.ts';
import type { Board, Records } from '../model/records.ts';
import type { Issue } from '../params/issue.ts';
import type { Fields, ValuesOf } from '../params/spec.ts';
import { noFitIssue } from '../records/no-fit-issue.ts';
import { readBoards } from '../records/read-boards.ts';
import { readStations } from '../records/read-stations.ts';
import { inTable } from '../records/table-issue.ts';
import type { TableText } from '../records/table-text.ts';
import { defineLumberWishes } from '../shop/lumber-wishes.ts';
import type { Design } from './design.ts';
import { topOf, topSize, tryFit } from './measured-top.ts';
import { pinIssues } from './pin-issues.ts';
import { readPins } from './read-pins.ts';

/** Tables that a maker keeps beside a design, as text; absent when there are none. */
export interface RecordTexts {
  readonly stations?: TableText;
  readonly boards?: TableText;
}

/** What was measured, or all that is wrong with the tables. */
export type RecordsOutcome =
  | { readonly records: Records; readonly issues?: never }
  | { readonly issues: readonly Issue[]; readonly records?: never };

/**
 * Reads what was measured for a design with these values, and tries whether the piece can be made on it; what the design settles
 * of its boards by hand is judged with them, all at once.
 *
 * @param file the design file, as one would call it.
 */
export function readRecords<F extends Fields>(
  design: Design<F>,
  values: ValuesOf<F>,
  { stations, boards }: RecordTexts,
  file = 'the design file',
): RecordsOutcome {
  const underside: RecordsOutcome = stations ? readUnderside(design, values, stations) : { records: {} };
  const bought = boards ? readBoards(boards, design.units) : undefined;
  const issues = [
    ...(underside.issues ?? []),
    ...(bought?.issues ?? []),
    ...wrongPins(design, values, bought?.boards, file),
  ];
  if (issues.length > 0) return { issues };
  return { records: { ...underside.records, ...(bought?.boards ? { boards: bought.boards } : {}) } };
}

/** Boards that the design settles by hand and that cannot be read, or that a table of boards and the piece do not allow. */
function wrongPins<F extends Fields>(
  design: Design<F>,
  values: ValuesOf<F>,
  boards: readonly Board[] | undefined,
  from: string,
): readonly Issue[] {
  const wishes = defineLumberWishes(design.lumber);
  const { pins, issues } = readPins(wishes.pinned, from);
  if (pins.length === 0 || !boards) return issues;
  const nominal = design.compose(values, design.title);
  return [...issues, ...pinIssues(pins, { boards, wishes, nominal, units: design.units, from })];
}

function readUnderside<F extends Fields>(design: Design<F>, values: ValuesOf<F>, table: TableText): RecordsOutcome {
  const { from } = table;
  const nominal = design.compose(values, design.title);
  const top = topOf(nominal);
  if (!top) {
    const because = `${nominal.title} has no top whose underside could be measured`;
    return { issues: [inTable('the table', from, { code: 'broken-table', because })] };
  }
  const { underside, issues } = readStations(table, topSize(nominal, top), design.units);
  if (issues) return { issues };
  const fit = tryFit(nominal, underside);
  if (!('surface' in fit)) return { issues: fit.map((one) => noFitIssue(one, from, design.units)) };
  const refused = refusedBy(() => design.compose(values, design.title, { underside: fit.surface }));
  if (refused === undefined) return { records: { underside } };
  const given = `as measured on ${underside.date}`;
  return { issues: [inTable('the underside', from, { code: 'rule', given, because: refused })] };
}

/** Why a piece cannot be put together on the measured underside. */
function refusedBy(compose: () => Assembly): string | undefined {
  try {
    compose();
    return undefined;
  } catch (error) {
    if (error instanceof RangeError) return error.message.split('\n')[0]!;
    throw error;
  }
}
