import type { BoardPlan } from '../derive/lumber/cut-plan/cut-plan.ts';
import { formatInches, formatMm, formatNumber, type UnitSystem } from '../units/format-length.ts';
import type { Mm } from '../units/mm.ts';
import type { Table } from './cut-list-table.ts';
import type { LumberPlan } from './lumber-plan.ts';

/** Every board that is opened: its cuts in their order, the parts that come out of it, what is left. */
export function cutPlanTable({ cuts }: LumberPlan, units: UnitSystem): Table {
  // Whole steps of the rule in the units of the design: exact there, and not rounded off in the others.
  const fine = (mm: Mm): string => (units === 'in' ? formatInches(mm, { mark: '' }) : formatMm(mm, 1, 'nearest', ''));
  const right = (head: string) => ({ head, align: 'right' }) as const;
  return {
    columns: [
      { head: 'board' },
      { head: 'lumber' },
      { head: 'row' },
      { head: 'what' },
      right(`along (${units})`),
      right(`across (${units})`),
      right(`L (${units})`),
      right(`W (${units})`),
      { head: 'remarks' },
    ],
    rows: cuts.flatMap(({ job, progress }) =>
      (progress.plan?.boards ?? []).flatMap((board) => boardRows(board, job.lumber, fine)),
    ),
  };
}

function boardRows(plan: BoardPlan, lumber: string, fine: (mm: Mm) => string): string[][] {
  const { board, cuts, placed, offcuts } = plan;
  const used = `${formatNumber(plan.yield * 100, 0)} % of the board in parts; ${plan.first} first`;
  return [
    ...cuts.map(({ kind, piece, at, keeps, leaves }, k) => [
      board,
      lumber,
      `cut ${k + 1}`,
      kind,
      kind === 'crosscut' ? fine(at) : '',
      kind === 'rip' ? fine(at) : '',
      '',
      '',
      `${piece === 0 ? 'the board' : `piece ${piece}`}${keeps === undefined ? '' : `; near side is piece ${keeps}`}${leaves === undefined ? '' : `; far side is piece ${leaves}`}`,
    ]),
    ...placed.map(({ part, x, y, length, width }, k) => [
      board,
      lumber,
      'part',
      part,
      fine(x),
      fine(y),
      fine(length),
      fine(width),
      k === 0 ? used : '',
    ]),
    ...offcuts.map(({ name, x, y, length, width }) => [
      board,
      lumber,
      'offcut',
      name,
      fine(x),
      fine(y),
      fine(length),
      fine(width),
      'worth keeping',
    ]),
  ];
}
