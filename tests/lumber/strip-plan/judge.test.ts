import { expect, test } from 'vitest';
import { loadSolver } from '../../../lib/derive/lumber/master.ts';
import { randomPile, TRIAL_WEIGHTS } from './random-boards.ts';
import { solved } from './solved.ts';
import { judgeByProgram } from './strip-judge.ts';

// A general solver for programs in whole numbers (HiGHS) is given the same piles; it counts no underside.
test.each([
  [8, 3, 'either', 0],
  [8, 3, 'two', 3],
  [9, 4, 'two', 3],
  [10, 3, 'either', 5],
  [12, 3, 'two', 0],
] as const)(
  '%i boards, %i strips, %s layers: a general solver comes to the same cost',
  async (boards, strips, layers, thinner) => {
    const weights = { ...TRIAL_WEIGHTS, undersideDefects: 0 };
    const settings = { layers, preference: { mode: 'weighted', weights } } as const;
    const problem = randomPile({ seed: boards + strips, boards, strips, thinner, settings });
    const ours = solved(problem);
    const judged = judgeByProgram(await loadSolver(), problem, { nodes: 20_000, gap: 1e-7 });
    expect(ours.done).toBe(true);
    expect(judged.proved).toBe(true);
    expect(ours.plan!.value).toBeCloseTo(judged.value, 2);
  },
);
