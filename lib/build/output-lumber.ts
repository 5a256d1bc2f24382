import { type CutBoardOnPage, cutDiagramPages } from '../derive/drawings/cut-diagram-pages.ts';
import { stripPlanDrawing } from '../derive/drawings/strip-plan-drawing.ts';
import type { Board } from '../model/records.ts';
import { csv } from '../writers/csv.ts';
import { writeSvg } from '../writers/svg.ts';
import { buyingTable } from './buying-table.ts';
import type { Table } from './cut-list-table.ts';
import { cutPlanTable } from './cut-plan-table.ts';
import { SPITE, warningOf } from './forced.ts';
import type { Job } from './job.ts';
import { type LumberPlan, paperPlan } from './lumber-plan.ts';
import { type Files, textFile } from './output.ts';
import { proofText } from './plan-proof.ts';
import { stripPlanTable } from './strip-plan-table.ts';
import { stripsAsPlanned } from './strips-as-planned.ts';

/** What to buy; and with a table of boards, which board goes where in the top, and how the rest is cut. */
export async function lumberFiles(job: Job): Promise<Files> {
  const plan = await paperPlan(job);
  const { design, nominal, shop, records } = job;
  const { units, title } = design;
  const forced = job.forced.length > 0;
  const files: Files = new Map();
  const table = (path: string, made: Table): void => void files.set(path, textFile(csvOf(made, forced)));
  table('lumber/buying-list.csv', buyingTable(plan.buying, nominal, shop, units));
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
  }
  if (cuts.some(({ progress }) => progress.plan)) {
    table('lumber/cut-plan.csv', cutPlanTable(plan, units));
    cutDiagramPages(boardsToCut(plan, records.boards ?? []), { title, units, warning }).forEach((page, n) => {
      files.set(`lumber/cut-plan${n === 0 ? '' : `-${n + 1}`}.svg`, textFile(writeSvg(page)));
    });
  }
  return files;
}

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
