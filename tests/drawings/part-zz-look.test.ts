import { mkdirSync, writeFileSync } from 'node:fs';
import { test } from 'vitest';
import { partSheets } from '../../lib/derive/drawings/sheets/part-sheets.ts';
import { makeSheet } from '../../lib/drawing/make-sheet.ts';
import { sheetSvg, sourceOf, headingOf } from '../../lib/build/zz-out.ts';
import { jobOf, NAMES } from './sheet-jobs.ts';
import { collisions } from './collisions.ts';
test('look', () => {
  mkdirSync('/tmp/parts', { recursive: true });
  for (const n of NAMES) {
    const job = jobOf(n);
    const source = sourceOf(job), heading = headingOf(job);
    const t0 = performance.now();
    const plans = partSheets(source, heading);
    const sheets = plans.map((p, k) => { const t = performance.now(); try { return { s: makeSheet(p, { ...heading, sheet: k + 1, of: plans.length }), t: performance.now() - t }; } catch (e) { console.log(n, p.name, String(e)); return undefined; } });
    console.log(n, 'ms', (performance.now() - t0).toFixed(0));
    for (const one of sheets) { if (!one) continue; const { s, t } = one; const c = collisions(s.drawing); console.log(n, s.name, s.title, s.paper.name, s.scale, t.toFixed(0) + 'ms', c.length, c.slice(0, 3)); writeFileSync(`/tmp/parts/${n}-${s.name}.svg`, sheetSvg(s)); }
  }
});
