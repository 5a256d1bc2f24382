import { expect, test } from 'vitest';
import type { StripProblem } from '../../../lib/derive/lumber/strip-plan/strip-problem.ts';
import type { Board } from '../../../lib/model/records.ts';
import { bruteForce } from './brute-force.ts';
import { randomPile } from './random-boards.ts';
import { solved } from './solved.ts';

/** Five boards jointed to one width, each full of deep defects: two seams lie as near to the middle as each other. */
function evenPile(seed: number): StripProblem {
  const settings = { layers: 'one', seamOnCenterLine: true, leastWidth: 30 } as const;
  const pile = randomPile({ seed, boards: 5, strips: 5, settings });
  const boards = pile.boards.map((board) => {
    const defects = board.defects.map((d) => ({
      ...d,
      depth: d.depth + 18,
      near: d.near % 120,
      far: (d.near % 120) + 25,
    }));
    return { ...board, width: 150, thickness: 65, defects };
  });
  return { ...pile, width: 540, boards };
}

test('of two slides as near to the middle the cheaper counts, for a plan and its mirror image alike', () => {
  let plans = 0;
  for (let seed = 1; seed <= 40; seed++) {
    const { plan, done } = solved(evenPile(seed));
    if (!plan) continue;
    plans++;
    expect([seed, done]).toEqual([seed, true]);
    expect(plan.value, `seed ${seed}`).toBeCloseTo(bruteForce(evenPile(seed)), 3);
  }
  expect(plans).toBeGreaterThan(30);
});

test('a search whose bound begins at nothing comes to its end', () => {
  // Wood and tone cost nothing: only what the knots on face B cost once rings alternate is left.
  const pile = randomPile({ seed: 2, boards: 4, strips: 3, settings: { layers: 'one' } });
  const boards = pile.boards.map((board, i): Board => {
    const [from, to] = [400 + 90 * i, 700 + 90 * i];
    const knot = { what: 'knot', face: 'B', from, to, near: 40, far: 75, depth: 12 } as const;
    return { ...board, bark: 'A', thickness: 64, width: 140, length: 2300, tone: 0.5, defects: [knot] };
  });
  const weights = { reserve: 4, shownDefects: 5, undersideDefects: 1, rings: 2, tone: 20, volume: 0, symmetry: 0 };
  const settings = { ...pile.settings, preference: { mode: 'weighted', weights } as const };
  const problem = { ...pile, width: 390, boards, settings };
  const { plan, done } = solved(problem, {}, 2_000_000);
  expect(done).toBe(true);
  expect(plan!.value).toBeGreaterThan(0.1);
  expect(plan!.value).toBeCloseTo(bruteForce(problem), 3);
});
