import { setImmediate as nextTurn } from 'node:timers/promises';
import type { Job, LumberSection, LumberWork, UnitSystem } from 'tablewright';
import { type Call, type Command, ONE_DESIGN, type Result } from '../command.ts';
import { EXIT } from '../exit.ts';
import type { Request } from '../input/read-request.ts';
import { withRequest } from '../input/with-request.ts';
import type { Reporter } from '../report/reporter.ts';

/** What to buy for a design, how far the boards at hand go, and what comes out of each. */
export const lumber: Command = {
  name: 'lumber',
  summary:
    'what to buy; with boards.csv beside the design, which board goes where, and how the rest is cut; fails when wood is missing',
  args: ONE_DESIGN,
  options: ['set', 'params', 'milled', 'units', 'json', 'quiet'],
  examples: ['lumber reading-table', 'lumber reading-table --milled "11=1 3/4 in"', 'lumber reading-table --units mm'],
  run: runLumber,
};

/** Ctrl-C ends the search: the best so far is told, and it says so. A second one ends at once. */
async function runLumber(call: Call): Promise<Result> {
  let stopped = false;
  const stop = (): void => {
    stopped = true;
    call.reporter.progress('stopping; this is what there is');
  };
  // From the beginning: while the library is loaded, too.
  process.once('SIGINT', stop);
  try {
    const result = await withRequest(call, 'lumber', (request) => planLumber(request, call, () => stopped));
    return stopped && result.exit === EXIT.good ? { ...result, exit: EXIT.stopped } : result;
  } finally {
    process.off('SIGINT', stop);
  }
}

async function planLumber(request: Request, { options, reporter }: Call, isStopped: () => boolean): Promise<Result> {
  const { ref, design, values, shop, records } = request;
  const { FULL_WORK, makeJob, tableText } = await import('tablewright');
  const { units = design.units } = options;
  const job = makeJob(design, values, shop, records);
  if (records.boards && !isStopped()) reporter.progress('searching; Ctrl-C gives the best plan so far');
  const { sections, json, lacks } = await planned(
    job,
    request,
    { ...FULL_WORK, explain: true, onProgress: teller(reporter, isStopped) },
    units,
  );
  const texts = sections.flatMap(({ title, lines, table }) => [
    reporter.paint('bold', title),
    ...lines,
    ...(table && table.rows.length > 0 ? [tableText(table.columns, table.rows)] : []),
    '',
  ]);
  reporter.result(texts.join('\n'));
  return { exit: lacks ? EXIT.failed : EXIT.good, json: { design: ref.name, ...json } };
}

interface Planned {
  readonly sections: readonly LumberSection[];
  readonly json: object;
  /** The top has no plan, or parts have no wood. */
  readonly lacks: boolean;
}

/** The plan for the boards as measured; when some came out otherwise, for these, and what that changes. */
async function planned(job: Job, { milled }: Request, work: LumberWork, units: UnitSystem): Promise<Planned> {
  const { lumberData, lumberPlan, lumberReport, milledData, milledPlan, milledReport, noWoodWords } = await import(
    'tablewright'
  );
  if (milled.length === 0) {
    const plan = await lumberPlan(job, work);
    return { sections: lumberReport(job, plan, units), json: lumberData(plan), lacks: noWoodWords(plan).length > 0 };
  }
  const found = await milledPlan(job, milled, work);
  return { sections: milledReport(found, units), json: milledData(found), lacks: noWoodWords(found.plan).length > 0 };
}

/** Tells now and then how far the search is, and whether it is to end. */
function teller(reporter: Reporter, isStopped: () => boolean): (text: string) => Promise<boolean> {
  let told = performance.now();
  return async (text) => {
    if (performance.now() - told > PATIENCE) {
      told = performance.now();
      reporter.progress(text);
    }
    await nextTurn();
    return isStopped();
  };
}

/** ms without a word. */
const PATIENCE = 1000;
