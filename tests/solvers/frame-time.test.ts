import { expect, test } from 'vitest';
import { assembleFrame } from '../../lib/derive/checks/solvers/frame-assemble.ts';
import { solveFrame } from '../../lib/derive/checks/solvers/frame-solve.ts';
import { READING_TABLE, topPush, trestleBase } from './sample-bases.ts';

test('a base of some 60 unknowns under two pushes takes under 1 ms, warm', () => {
  const base = trestleBase(READING_TABLE);
  expect(assembleFrame(base).stiffness.size).toBeGreaterThan(60);
  const cases = [topPush('along', [300, 0, 0]), topPush('across', [0, 300, 0])];
  let best = Infinity;
  for (let run = 0; run < 300; run++) {
    const start = performance.now();
    solveFrame(base, cases);
    best = Math.min(best, performance.now() - start);
  }
  expect(best).toBeLessThan(1);
});
