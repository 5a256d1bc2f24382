import { flattenValues } from '../params/values.ts';
import { json } from '../writers/json.ts';
import { derivedNumbers } from './derived.ts';
import { forcedField } from './forced.ts';
import type { Job } from './job.ts';
import { lumberData } from './lumber-data.ts';
import { paperPlan } from './lumber-plan.ts';
import { type Files, textFile } from './output.ts';

/** `model.json`: lengths in mm, angles in degrees, frames as origin and two axes. */
export async function modelFile(job: Job): Promise<Files> {
  const { title, number, revision, date, units, params } = job.design;
  const { parts, places, joints, fixings, supplies, climate } = job.assembly;
  const document = {
    schema: 1,
    title,
    ...(number === undefined ? {} : { number }),
    revision,
    date,
    ...forcedField(job),
    units,
    values: Object.fromEntries(flattenValues(params, job.values)),
    derived: derivedNumbers(job),
    ...(job.fit ? { measured: job.fit } : {}),
    ...(job.records.boards ? { lumber: lumberData(await paperPlan(job)) } : {}),
    assembly: { parts, places, joints, fixings, supplies, climate },
  };
  return new Map([['model.json', textFile(json(document))]]);
}
