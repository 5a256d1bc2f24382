import { test } from 'vitest';
import { partSheets } from '../../lib/derive/drawings/sheets/part-sheets.ts';
import { makeSheet } from '../../lib/drawing/make-sheet.ts';
import { sheetSet } from '../../lib/derive/drawings/sheets/sheet-set.ts';
import { sourceOf, headingOf } from '../../lib/build/zz-out.ts';
import { jobOf } from './sheet-jobs.ts';
test('time', () => {
  const job = jobOf('reading-table');
  const source = sourceOf(job), heading = headingOf(job);
  for (let i = 0; i < 3; i++) {
    const c = process.cpuUsage();
    const plans = partSheets(source, heading); plans.forEach((p, k) => makeSheet(p, { ...heading, sheet: k + 1, of: 1 }));
    const d = process.cpuUsage(c);
    const c2 = process.cpuUsage(); sheetSet(source, heading); const d2 = process.cpuUsage(c2);
    console.log('part sheets cpu', ((d.user + d.system) / 1000).toFixed(0), 'whole set cpu', ((d2.user + d2.system) / 1000).toFixed(0));
  }
});
