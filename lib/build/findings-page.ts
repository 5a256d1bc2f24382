import type { FindingsPage } from '../writers/findings-html.ts';
import { cautions } from './cautions.ts';
import { warningOf } from './forced.ts';
import type { Job } from './job.ts';

/** The page of findings of a job. */
export function findingsPage(job: Job): FindingsPage {
  const { title, number, revision, date, units } = job.design;
  return {
    title,
    number,
    revision,
    date,
    units,
    findings: job.findings,
    warning: warningOf(job),
    cautions: cautions(job),
  };
}
