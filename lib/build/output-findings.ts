import { worst } from '../model/finding.ts';
import { json } from '../writers/json.ts';
import type { Job } from './job.ts';
import { type Files, textFile } from './output.ts';

export function findingsFile(job: Job): Files {
  const { title, revision, date } = job.design;
  const document = { schema: 1, title, revision, date, verdict: worst(job.findings), findings: job.findings };
  return new Map([['findings.json', textFile(json(document))]]);
}
