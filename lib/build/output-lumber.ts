import { csv } from '../writers/csv.ts';
import { writeSvg } from '../writers/svg.ts';
import { buyingTable } from './buying-table.ts';
import type { Table } from './cut-list-table.ts';
import { cutPlanTable } from './cut-plan-table.ts';
import { SPITE, warningOf } from './forced.ts';
import type { Job } from './job.ts';
import { cutDrawing, stripDrawing } from './lumber-drawings.ts';
import { paperPlan } from './lumber-plan.ts';
import { type Files, textFile } from './output.ts';
import { stripPlanTable } from './strip-plan-table.ts';

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
    const drawing = stripDrawing(strips.status.plan, strips.problem, title, units, warning);
    files.set('lumber/strip-plan.svg', textFile(writeSvg(drawing)));
  }
  if (cuts.some(({ progress }) => progress.plan)) {
    table('lumber/cut-plan.csv', cutPlanTable(plan, units));
    files.set('lumber/cut-plan.svg', textFile(writeSvg(cutDrawing(plan, records.boards ?? [], title, warning))));
  }
  return files;
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
