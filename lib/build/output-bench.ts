import { formatValue } from '../params/format-value.ts';
import type { Param } from '../params/param.ts';
import { readValues } from '../params/read-values.ts';
import { flattenValues, valueAt } from '../params/values.ts';
import { benchHtml } from '../writers/bench-html.ts';
import type { Assets } from './assets.ts';
import type { BenchData } from './bench-data.ts';
import { warningOf } from './forced.ts';
import type { Job } from './job.ts';
import { type Files, textFile } from './output.ts';

/** The live page of the design: its parameters as fields, and the library itself to follow them. */
export function benchFile(job: Job, { pages }: Assets): Files {
  const { title, number, revision, date } = job.design;
  const warning = warningOf(job);
  const html = benchHtml({ title, number, revision, date, warning, script: pages.bench, data: benchData(job) });
  return new Map([['bench.html', textFile(html)]]);
}

const benchData = (job: Job): BenchData => ({ shop: job.shop, records: job.records, set: ownSet(job) });

/** Where the values of the job are not those of the design file. */
function ownSet({ design, values }: Job): BenchData['set'] {
  const { params, units } = design;
  const file = readValues(params, design.values).values;
  return [...flattenValues(params, values)]
    .filter(([path, value]) => !file || JSON.stringify(valueAt(file, path)) !== JSON.stringify(value))
    .map(([path, value]) => [path, formatValue<Param>(params.table.get(path)!, value as never, units)]);
}
