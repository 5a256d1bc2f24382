import { describe, expect, test } from 'vitest';
import { checkStripPlan } from '../../../lib/derive/lumber/strip-plan/check-strip-plan.ts';
import { bruteForce } from './brute-force.ts';
import { smallProblem } from './small-problem.ts';
import { solved } from './solved.ts';

describe('all plans of small piles', () => {
  const seeds = Array.from({ length: 240 }, (_, k) => k + 1);

  test('none is cheaper than the plan called the best possible', () => {
    let feasible = 0;
    for (const seed of seeds) {
      const problem = smallProblem(seed);
      const best = bruteForce(problem);
      const { plan, done, bound } = solved(problem);
      expect(done, `seed ${seed}`).toBe(true);
      expect(plan?.value ?? Number.POSITIVE_INFINITY, `seed ${seed}`).toBeCloseTo(best, 3);
      if (!plan) continue;
      feasible++;
      expect(bound).toBeLessThanOrEqual(plan.value);
      expect(checkStripPlan(problem, plan), `seed ${seed}`).toEqual([]);
    }
    expect(feasible).toBeGreaterThan(60);
  });
});
