import { setImmediate as nextTurn } from 'node:timers/promises';
import { type Call, type Command, ONE_DESIGN, type Result } from '../command.ts';
import { EXIT } from '../exit.ts';
import type { Request } from '../input/read-request.ts';
import { withRequest } from '../input/with-request.ts';

/** What to buy for a design, how far the boards at hand go, and what comes out of each. */
export const lumber: Command = {
  name: 'lumber',
  summary: 'what to buy; with boards.csv beside the design, which board goes where, and how the rest is cut',
  args: ONE_DESIGN,
  options: ['set', 'params', 'units', 'json', 'quiet'],
  examples: ['lumber reading-table', 'lumber reading-table --units mm'],
  run: (call) => withRequest(call, 'lumber', (request) => planLumber(request, call)),
};

/** Ctrl-C ends the search: the best plan so far is told, and it says so. A second one ends at once. */
async function planLumber(
  { ref, design, values, shop, records }: Request,
  { options, reporter }: Call,
): Promise<Result> {
  const { FULL_WORK, lumberData, lumberPlan, lumberReport, makeJob, tableText } = await import('tablewright');
  const { units = design.units } = options;
  const job = makeJob(design, values, shop, records);
  let stopped = false;
  const stop = (): void => {
    stopped = true;
  };
  process.once('SIGINT', stop);
  if (records.boards) reporter.progress('searching; Ctrl-C gives the best plan so far');
  let told = performance.now();
  const onProgress = async (text: string): Promise<boolean> => {
    if (performance.now() - told > PATIENCE) {
      told = performance.now();
      reporter.progress(text);
    }
    await nextTurn();
    return stopped;
  };
  const plan = await lumberPlan(job, { ...FULL_WORK, onProgress });
  process.off('SIGINT', stop);
  const sections = lumberReport(job, plan, units).flatMap(({ title, lines, table }) => [
    reporter.paint('bold', title),
    ...lines,
    ...(table && table.rows.length > 0 ? [tableText(table.columns, table.rows)] : []),
    '',
  ]);
  reporter.result(sections.join('\n'));
  const exit = plan.stopped ? EXIT.stopped : EXIT.good;
  return { exit, json: { design: ref.name, ...lumberData(plan) } };
}

/** ms without a word. */
const PATIENCE = 1000;
