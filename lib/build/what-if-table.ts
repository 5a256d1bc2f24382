import { changingColumns, columnName, isWell, limitText, lookOf, rangeText } from '../derive/what-if/column-look.ts';
import { type Column, columnsOf } from '../derive/what-if/columns.ts';
import { VERDICT_MARKS } from '../derive/what-if/verdict-marks.ts';
import { isNow, type Trial, type WhatIf } from '../derive/what-if/what-if.ts';
import type { Finding } from '../model/finding.ts';
import { worst } from '../model/finding.ts';
import { massLook } from '../model/finding-number.ts';
import { formatNumber, type UnitSystem } from '../units/format-length.ts';
import type { TextColumn } from '../writers/table-text.ts';

/** A table of trials for a terminal: text cells by column. */
export interface WhatIfTable {
  /** The values and the verdict, then whatever changes. */
  readonly lead: readonly TextColumn[];
  readonly columns: readonly TextColumn[];
  readonly rows: readonly WhatIfRow[];
  /** Checks that nothing changes, with their verdicts. */
  readonly unchanged: readonly string[];
  /** What each column would say in a line, where there is no room for it; empty for those that must be shown. */
  readonly brief: readonly string[];
}

export interface WhatIfRow {
  readonly lead: readonly string[];
  readonly cells: readonly string[];
  /** Why there is no such piece; then there are no cells. */
  readonly refused?: string | undefined;
}

/** Marks the row of the design as it stands. */
export const NOW_MARK = '*';

/** One row a trial; columns of all checks when `all`, otherwise of those that change. */
export function whatIfTable(result: WhatIf, units: UnitSystem, all = false): WhatIfTable {
  const columns = columnsOf(result.trials);
  const shown = all ? columns : changingColumns(columns, units);
  const [troubled, well] = [shown.filter(isWell(false)), shown.filter(isWell(true))];
  const same = columns.filter((column) => !shown.includes(column));
  const numbers = (ordered: readonly Column[]): TextColumn[] =>
    ordered.map((column) => ({ head: headOf(column, units), align: 'right' }));
  return {
    lead: [{ head: '' }, ...result.axes.map(({ path }) => ({ head: path.replace('.', '.\n') })), { head: 'verdict' }],
    columns: [
      ...numbers(troubled),
      { head: `mass\n${massLook(units).unit}`, align: 'right' },
      { head: 'board feet\nrough', align: 'right' },
      ...numbers(well),
    ],
    rows: result.trials.map((trial, k) => rowOf(result, trial, [troubled, well], k, units)),
    unchanged: [...new Set(same.map((column) => sameText(column, columns, units)))],
    brief: [...troubled.map(() => ''), '', '', ...well.map((column) => rangeText(column, columns, units))],
  };
}

function rowOf(
  result: WhatIf,
  trial: Trial,
  [troubled, well]: readonly (readonly Column[])[],
  k: number,
  units: UnitSystem,
): WhatIfRow {
  const steps = result.axes.map(({ steps }, axis) => steps[trial.at[axis]!]!.text);
  const mark = isNow(result, trial) ? NOW_MARK : '';
  if (trial.refused !== undefined) return { lead: [mark, ...steps, 'not allowed'], cells: [], refused: trial.refused };
  const cells = (columns: readonly Column[] = []): string[] =>
    columns.map((column) => cellText(column, column.cells[k], units));
  return {
    lead: [mark, ...steps, worst(trial.findings)],
    cells: [...cells(troubled), massLook(units).bare(trial.mass), formatNumber(trial.boardFeet, 1), ...cells(well)],
  };
}

/** `6.4 mm L`; the place of the letter stays free where all is ok, so that numbers stand below each other. */
function cellText(column: Column, cell: Finding | undefined, units: UnitSystem): string {
  if (!cell) return '';
  const { value, verdict } = cell;
  const text = value === undefined ? (verdict === 'ok' ? 'ok' : '-') : lookOf(column, units).say(value);
  return `${text} ${VERDICT_MARKS[verdict] || ' '}`;
}

/** `clamps (look again)` */
function sameText(column: Column, all: readonly Column[], units: UnitSystem): string {
  const name = columnName(column, all, units);
  const verdict = column.cells.find((cell) => cell !== undefined)?.verdict ?? 'ok';
  return verdict === 'ok' ? name : `${name} (${verdict})`;
}

/** Widest line of a head. */
const HEAD = 12;

function headOf(column: Column, units: UnitSystem): string {
  const lines: string[] = [];
  for (const word of column.check.split(' ')) {
    const last = lines.at(-1);
    if (last === undefined || last.length + 1 + word.length > HEAD) lines.push(word);
    else lines[lines.length - 1] = `${last} ${word}`;
  }
  return [...lines, limitText(column, units)]
    .filter(Boolean)
    .map((line) => `${line}  `)
    .join('\n');
}
