import { expect, test } from 'vitest';
import { makeJob } from '../../lib/build/job.ts';
import { sheetsOf } from '../../lib/build/output-drawings.ts';
import { sampleOf } from '../tables/random-values.ts';
import { collisions } from './collisions.ts';
import { DESIGNS, uncheckedJob } from './sheet-jobs.ts';

/** Papers by turns; tables of all kinds and sizes. */
const PAPERS = ['usual', 'A', 'A3', 'C'] as const;

/** More by hand: SHEETS=200. */
const COUNT = Number(process.env['SHEETS'] ?? 20);

test('tables of all kinds and sizes have sheets without a collision', () => {
  const faults: string[] = [];
  for (let seed = 0; seed < COUNT; seed++) {
    const { name, design, values } = sampleOf(seed);
    const sheets = { paper: PAPERS[seed % PAPERS.length]! };
    const job = uncheckedJob(makeJob({ ...DESIGNS[design], sheets }, values as never));
    for (const sheet of sheetsOf(job)) {
      const [first, ...more] = collisions(sheet.drawing);
      if (first) faults.push(`${name}, ${sheet.name} 1:${sheet.scale}: ${first} and ${more.length} more`);
    }
  }
  expect(faults).toEqual([]);
});
