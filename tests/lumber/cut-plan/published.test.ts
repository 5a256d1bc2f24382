import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { CutProblem } from '../../../lib/derive/lumber/cut-plan/cut-problem.ts';
import { cutPlanOf } from '../../../lib/derive/lumber/cut-plan/plan-cuts.ts';
import { loadSolver } from '../../../lib/derive/lumber/master.ts';

const DATA = process.env['TABLEWRIGHT_BENCH_DATA'] ?? join(import.meta.dirname, '../../../../shared/data/bench');
const solver = await loadSolver();

/** Rows of numbers of a text. */
const rows = (text: string): number[][] =>
  text
    .trim()
    .split('\n')
    .map((line) => line.trim().split(/\s+/).map(Number))
    .filter((row) => row.length >= 3 && row.every(Number.isFinite));

/** Cintra, Miyazawa, Wakabayashi, Xavier 2008: three sheet sizes, as many of each as wanted. */
function sheets(text: string): CutProblem {
  const [[kinds = 0] = [], ...rest] = rows(text).map((row, n) => (n === 0 ? [row[1]!] : row));
  const pieces = rest.slice(kinds);
  const total = pieces.reduce((sum, [, , demand]) => sum + demand!, 0);
  return {
    boards: rest.slice(0, kinds).map(([length, width, cost], n) => ({
      id: `S${n}`,
      length: length!,
      width: width!,
      cost: cost!,
      avoid: [],
      count: total,
    })),
    parts: pieces.map(([length, width, count], n) => ({ id: `P${n}`, length: length!, width: width!, count: count! })),
    kerf: 0,
    first: 'rip',
  };
}

/** Published bound and best value (Cintra 2008 in three sheet sizes; values beside the instances). */
const CINTRA: readonly (readonly [file: string, bound: number, best: number])[] = [
  ['gcut1d', 14823125, 14871875],
  ['gcut2d', 16741250, 16755000],
  ['gcut3d', 20150000, 20177441.32],
  ['gcut4d', 46523750, 46527500],
];

/** Share by which the search leaves its bound below that of the converged mixture. */
const SLACK = 1e-3;

describe.skipIf(!existsSync(DATA))('published instances (TABLEWRIGHT_BENCH_DATA)', () => {
  it.each(CINTRA)(
    'the bound of %s meets the published one, and no plan is better than optimal',
    (file, bound, best) => {
      const found = cutPlanOf(sheets(readFileSync(join(DATA, `2d/cintra2008/${file}.txt`), 'utf8')), solver, 150);
      expect(found.bound).toBeLessThanOrEqual(best);
      expect(found.bound).toBeGreaterThan(bound * (1 - SLACK));
      expect(found.value).toBeGreaterThanOrEqual(bound);
    },
  );
});
