import { writeFileSync } from 'node:fs';
import { chartOf, chartSvg, type Design, type WhatIf } from 'tablewright';
import { fileReason } from '../report/file-reason.ts';
import type { Problem } from '../report/problem.ts';

/** Draws a what-if into a file; answers why that could not be. */
export function writeChart(file: string, result: WhatIf, design: Design, units: 'in' | 'mm'): Problem | undefined {
  const { title, revision, date } = design;
  const svg = chartSvg(chartOf(result, { title: `${title}, revision ${revision}, ${date}`, units }));
  try {
    writeFileSync(file, svg);
    return undefined;
  } catch (error) {
    const because = fileReason(error);
    if (because === undefined) throw error;
    return { code: 'not-writable', given: file, subject: '', because, try: '--chart with a file that can be written' };
  }
}
