import { test, expect } from 'vitest';
import { partSheets } from '../../lib/derive/drawings/sheets/part-sheets.ts';
import { makeSheet } from '../../lib/drawing/make-sheet.ts';
import { sourceOf, headingOf } from '../../lib/build/zz-out.ts';
import { makeJob } from '../../lib/build/job.ts';
import { jobOf, NAMES, DESIGNS, uncheckedJob } from './sheet-jobs.ts';
import { sampleOf } from '../tables/random-values.ts';
import { collisions } from './collisions.ts';
const SETS: any = { usual: {}, letter: { paper: 'A', owner: 'Workshop at the mill, joiners since the flood' }, A4: { paper: 'A4' }, big: { paper: 'C', lengths: 'both', projection: 'first' }, A2: { paper: 'A2', projection: 'third', lengths: 'in' } };
test('all', () => {
  const out: string[] = [];
  const run = (label: string, job: any) => {
    const source = sourceOf(job), heading = headingOf(job);
    const plans = partSheets(source, heading);
    plans.forEach((p, k) => { try { const s = makeSheet(p, { ...heading, sheet: k + 1, of: plans.length }); const c = collisions(s.drawing); if (c.length || s.paper.name !== heading.paper.name || s.scale > 24) out.push(`${label} ${s.name} ${s.paper.name} 1:${s.scale} ${c.length} ${c[0] ?? ''} ${c[1] ?? ''}`); } catch (e) { out.push(`${label} ${p.name} ${e}`); } });
  };
  for (const n of NAMES) for (const [w, g] of Object.entries(SETS)) run(`${n} ${w}`, jobOf(n, [], { sheets: g as any }));
  const P = ['usual', 'A', 'A3', 'C'];
  for (let seed = 0; seed < Number(process.env.SEEDS ?? 20); seed++) { const { name, design, values } = sampleOf(seed); run(`${seed} ${name}`, uncheckedJob(makeJob({ ...DESIGNS[design], sheets: { paper: P[seed % 4] } } as any, values as never))); }
  console.log(out.join('\n'));
});
