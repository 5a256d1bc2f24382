import { type CutBoardOnPage, cutDiagramPages } from '../derive/drawings/cut-diagram-pages.ts';
import { stripPlanDrawing } from '../derive/drawings/strip-plan-drawing.ts';
import type { Board } from '../model/records.ts';
import type { UnitSystem } from '../units/format-length.ts';
import { csv } from '../writers/csv.ts';
import { writeSvg } from '../writers/svg.ts';
import { blanksWords } from './blanks-words.ts';
import { buyingTable } from './buying-table.ts';
import type { Table } from './cut-list-table.ts';
import { cutPlanTable } from './cut-plan-table.ts';
import { SPITE, warningOf } from './forced.ts';
import type { Job } from './job.ts';
import { keptWords } from './kept-words.ts';
import { type LumberPlan, paperPlan } from './lumber-plan.ts';
import { noWoodWords } from './no-wood-words.ts';
import { type Files, textFile } from './output.ts';
import { proofText } from './plan-proof.ts';
import type { StripsFound } from './search-strips.ts';
import { stripPlanTable } from './strip-plan-table.ts';
import { stripSections } from './strip-sections.ts';
import { stripsAsPlanned } from './strips-as-planned.ts';

/** What to buy; and with a table of boards, which board goes where in the top, and how the rest is cut. */
export async function lumberFiles(job: Job): Promise<Files> {
  const plan = await paperPlan(job);
  const { design, records } = job;
  const { units, title } = design;
  const forced = job.forced.length > 0;
  const files: Files = new Map();
  const table = (path: string, made: Table): void => void files.set(path, textFile(csvOf(made, forced)));
  table('lumber/buying-list.csv', buyingTable(plan.buying, job, units));
  const { strips, cuts } = plan;
  const warning = warningOf(job);
  if (strips?.status.plan) {
    table('lumber/strip-plan.csv', stripPlanTable(strips.status.plan, units));
    const { revision, date } = design;
    const redraw = stripsAsPlanned(strips.status.plan, strips.problem, units);
    const heading = {
      title,
      revision,
      date,
      units,
      redraw,
      bound: proofText(strips.status),
      ...(warning ? { warning } : {}),
    };
    const drawing = stripPlanDrawing(strips.status.plan, strips.problem, heading);
    files.set('lumber/strip-plan.svg', textFile(writeSvg(drawing)));
  } else if (strips) {
    table('lumber/strip-plan.csv', noStripsTable(strips, units));
  }
  if (cuts.length > 0) {
    table('lumber/cut-plan.csv', cutPlanTable(plan, units));
    const notes = [
      ...(plan.kept ? [keptWords(plan.kept)] : []),
      ...noWoodWords(plan),
      ...blanksWords(plan.wanted, units),
    ];
    cutDiagramPages(boardsToCut(plan, records.boards ?? []), { title, units, warning, notes }).forEach((page, n) => {
      files.set(`lumber/cut-plan${n === 0 ? '' : `-${n + 1}`}.svg`, textFile(writeSvg(page)));
    });
  }
  return files;
}

/** In place of a plan: why there is none. */
function noStripsTable(strips: StripsFound, units: UnitSystem): Table {
  const { columns } = stripPlanTable(NO_STRIPS, units);
  const lines = ['no plan', ...stripSections(strips, units).flatMap((section) => section.lines)];
  return { columns, rows: lines.map((line) => columns.map((_, k) => (k === columns.length - 1 ? line : ''))) };
}

/** For the heads of the columns alone. */
const NO_STRIPS = { strips: [] };

/** Every board that is opened, with the class of lumber that it serves. */
function boardsToCut({ cuts }: LumberPlan, boards: readonly Board[]): CutBoardOnPage[] {
  return cuts.flatMap(({ job, progress }) =>
    (progress.plan?.boards ?? []).map((plan) => {
      const board = boards.find(({ mark }) => mark === plan.board);
      if (!board) throw new RangeError(`${plan.board} is planned and is no board`);
      return { board, plan, kerf: progress.plan!.kerf, lumber: job.lumber };
    }),
  );
}

/** The remarks are the last column. */
function csvOf({ columns, rows }: Table, forced: boolean): string {
  const warned = rows.map((cells) => {
    const remarks = [forced ? SPITE : '', cells.at(-1)!].filter(Boolean).join('; ');
    return [...cells.slice(0, -1), remarks];
  });
  return csv(
    columns.map(({ head }) => head),
    warned,
  );
}
