import { worst } from '../model/finding.ts';
import { findingsHtml } from '../writers/findings-html.ts';
import { json } from '../writers/json.ts';
import { findingsPage } from './findings-page.ts';
import { forcedField } from './forced.ts';
import type { Job } from './job.ts';
import { type Files, textFile } from './output.ts';

export function findingsFiles(job: Job): Files {
  const { title, revision, date } = job.design;
  const head = { schema: 1, title, revision, date, ...forcedField(job) };
  return new Map([
    ['findings.json', textFile(json({ ...head, verdict: worst(job.findings), findings: job.findings }))],
    ['findings.html', textFile(findingsHtml(findingsPage(job)))],
  ]);
}
