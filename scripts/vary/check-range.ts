import { setImmediate as nextTurn } from 'node:timers/promises';
import { readVariations, whatIf, whatIfData, whatIfTable } from 'tablewright';
import type { Call, Result } from '../command.ts';
import { EXIT } from '../exit.ts';
import type { Request } from '../input/read-request.ts';
import { exitOf } from '../report/problem.ts';
import type { Reporter } from '../report/reporter.ts';
import { whatIfText } from '../report/what-if-text.ts';
import { writeChart } from './write-chart.ts';

/** What the checks say over the range that `--vary` asks for: a table, data, and a chart when one is wanted. */
export async function checkRange(request: Request, { options, reporter }: Call): Promise<Result> {
  const { ref, design, values, shop } = request;
  const { units = design.units, chart, all } = options;
  const { variations, issues } = readVariations(design.params, values, options.vary, units);
  if (issues) {
    reporter.problems(issues, 'nothing was tried', units);
    return { exit: exitOf(issues), json: { design: ref.name } };
  }
  if (request.records.underside) reporter.progress('tried as designed; the readings of the underside are left out');
  const onTrial = progressOf(reporter);
  const result = await whatIf({ ...design, units }, values, variations, { shop, onTrial });
  reporter.result(whatIfText(whatIfTable(result, units, all), all, reporter.paint));
  const json = { design: ref.name, units, ...whatIfData(result) };
  if (chart === undefined) return { exit: EXIT.good, json };
  const problem = writeChart(chart, result, design, units);
  if (!problem) {
    reporter.summary(`\nthe chart is in ${chart}`);
    return { exit: EXIT.good, json: { ...json, chart } };
  }
  reporter.problems([problem], 'the chart was not written');
  return { exit: exitOf([problem]), json };
}

/** Tells how far it is, every few seconds, and lets Ctrl-C in. */
function progressOf(reporter: Reporter): (done: number, all: number) => Promise<void> {
  let told = performance.now();
  return async (done, all) => {
    if (performance.now() - told > PATIENCE) {
      told = performance.now();
      reporter.progress(`${done} of ${all} pieces tried`);
    }
    await nextTurn();
  };
}

/** ms without a word. */
const PATIENCE = 3000;
