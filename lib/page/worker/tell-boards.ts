import { costWords } from '../../build/cost-words.ts';
import type { Table } from '../../build/cut-list-table.ts';
import type { StripsFound } from '../../build/search-strips.ts';
import { stripPlanTable } from '../../build/strip-plan-table.ts';
import { costLine, stripSections } from '../../build/strip-sections.ts';
import { stripsAsPlanned } from '../../build/strips-as-planned.ts';
import { formatLength, type UnitSystem } from '../../units/format-length.ts';
import type { BoardsTold, Setting } from './messages.ts';

/** A strip plan, or why there is none and what would mend it, in the words of the papers. */
export function tellBoards(found: StripsFound, units: UnitSystem): BoardsTold {
  const { plan } = found.status;
  if (!plan) return { lines: stripSections(found, units).flatMap(({ lines }) => lines) };
  const left = plan.unused.join(', ') || 'none';
  return {
    lines: [
      costLine(found),
      costWords(plan, found.problem, units),
      `least reserve over the wedge ${formatLength(plan.reserve, units, 'down')}; left over: ${left}`,
    ],
    table: boardFirst(stripPlanTable(plan, units)),
    joints: settingOf(stripsAsPlanned(plan, found.problem, units)),
  };
}

/** Columns of the papers that say which board, and how it lies: beside the strip, where a phone shows them. */
const WHICH: ReadonlySet<string> = new Set(['strip', 'board', 'face up', 'bark', 'lies']);

function boardFirst({ columns, rows }: Table): Table {
  const places = columns.map((_, k) => k);
  const isWhich = (k: number): boolean => WHICH.has(columns[k]!.head);
  const order = [...places.filter(isWhich), ...places.filter((k) => !isWhich(k))];
  const turned = <T>(cells: readonly T[]): T[] => order.map((k) => cells[k]!);
  return { columns: turned(columns), rows: rows.map(turned) };
}

/** `top.strips=5 in, 5 in` */
function settingOf(assignment: string): Setting {
  const at = assignment.indexOf('=');
  return { path: assignment.slice(0, at), text: assignment.slice(at + 1) };
}
