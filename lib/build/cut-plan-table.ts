import { marksText } from '../derive/cut-list/building-order.ts';
import type { BlanksWanted } from '../derive/lumber/blanks-wanted.ts';
import type { BoardPlan, SawCut } from '../derive/lumber/cut-plan/cut-plan.ts';
import { formatInches, formatMm, formatNumber, type UnitSystem } from '../units/format-length.ts';
import type { Mm } from '../units/mm.ts';
import { boardsWords } from './blanks-words.ts';
import type { Table } from './cut-list-table.ts';
import { keptWords } from './kept-words.ts';
import type { LumberPlan } from './lumber-plan.ts';
import { misfitReason } from './misfit-words.ts';
import { NOT_KEPT } from './not-kept.ts';

/** Every board that is opened, then parts without a board, what to buy for them, and what else is to be known. */
export function cutPlanTable(plan: LumberPlan, units: UnitSystem): Table {
  const fine = printerOf(units);
  const { columns, rows } = cutsTable(plan, units);
  const more = [
    ...leftRows(plan, fine),
    ...plan.wanted.map((one) => blanksRow(one, fine, units)),
    ...notes(plan).map((note) => ['', '', 'note', '', '', '', '', '', note]),
  ];
  return { columns, rows: [...rows, ...more] };
}

/** Every board that is opened: its cuts in their order, the parts that come out of it, what is left. */
export function cutsTable({ cuts }: LumberPlan, units: UnitSystem): Table {
  const fine = printerOf(units);
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

type Print = (mm: Mm) => string;

/** Whole steps of the rule in the units of the design: exact there, and not rounded off in the others. */
const printerOf =
  (units: UnitSystem): Print =>
  (mm) =>
    units === 'in' ? formatInches(mm, { mark: '' }) : formatMm(mm, 1, 'nearest', '');

/** Parts that no board is left for, and why. */
function leftRows({ cuts, wanted }: LumberPlan, fine: Print): string[][] {
  return cuts.flatMap(({ job, progress: { misfits, plan }, left }) =>
    [...left, ...(plan || left.length > 0 ? [] : job.problem.parts)].map(({ id, length, width }) => {
      const misfit = misfits.find(({ part }) => part === id);
      const blank = wanted.find(({ marks }) => marks.includes(id)) ?? { length, width };
      const lumber = 'lumber' in blank ? blank.lumber : job.lumber;
      const why = misfit ? misfitReason(misfit) : 'the search has not found a plan yet';
      return ['', lumber, 'no board', id, '', '', fine(blank.length), fine(blank.width), why];
    }),
  );
}

const blanksRow = (one: BlanksWanted, fine: Print, units: UnitSystem): string[] => [
  '',
  one.lumber ?? '',
  'to buy',
  `${one.pieces} for ${marksText(one.marks)}`,
  '',
  '',
  fine(one.length),
  fine(one.width),
  boardsWords(one, units),
];

/** What is to be known of boards that the strips take, or do not. */
const notes = ({ kept, strips }: LumberPlan): string[] => [
  ...(kept ? [keptWords(kept)] : []),
  ...(strips && !strips.status.plan ? [NOT_KEPT] : []),
];

/** The place on the board, and beside it what stop or fence are set to: L or W of the piece that comes off at the near side. */
function cutCells({ kind, piece, at, stop, keeps, leaves }: SawCut, fine: Print): string[] {
  const off = keeps === undefined ? '' : fine(stop);
  const cells = kind === 'crosscut' ? [fine(at), '', off, ''] : ['', fine(at), '', off];
  const made = [
    piece === 0 ? 'the board' : `piece ${piece}`,
    ...(keeps === undefined ? [] : [`near side is piece ${keeps}`]),
    ...(leaves === undefined ? [] : [`far side is piece ${leaves}`]),
  ];
  return [kind, ...cells, made.join('; ')];
}

function boardRows(plan: BoardPlan, lumber: string, fine: (mm: Mm) => string): string[][] {
  const { board, cuts, placed, offcuts } = plan;
  const used = `${formatNumber(plan.yield * 100, 0)} % of the board in parts; ${plan.first} first`;
  return [
    ...cuts.map((cut, k) => [board, lumber, `cut ${k + 1}`, ...cutCells(cut, fine)]),
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
