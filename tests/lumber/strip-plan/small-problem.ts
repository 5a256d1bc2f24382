import type { StripProblem, StripSettings } from '../../../lib/derive/lumber/strip-plan/strip-problem.ts';
import { pick, randomFrom } from '../../tables/random.ts';
import { randomPile, TRIAL_WEIGHTS } from './random-boards.ts';

/** Small piles of all sorts: one and two layers, a seam in the middle, wishes and pins, thin stock, flat and steep wedges. */
export function smallProblem(seed: number): StripProblem {
  const random = randomFrom(seed);
  const strips = pick(random, [2, 3, 3, 4]);
  const boards = Math.min(7, strips + Math.floor(random() * (8 - strips)));
  const settings: Partial<StripSettings> = {
    layers: pick(random, ['either', 'either', 'two', 'one'] as const),
    rings: pick(random, ['alternate', 'ignore'] as const),
    seamOnCenterLine: random() < 0.25,
    leastHalf: pick(random, [0, 0, 30, 60]),
    leastWidth: pick(random, [30, 50.8, 110]),
    scarceFrom: pick(random, [40, 50.8]),
    preference: {
      mode: 'weighted',
      weights: {
        ...TRIAL_WEIGHTS,
        symmetry: pick(random, [0, 0, 0.5]),
        tone: pick(random, [20, 20, 0]),
        undersideDefects: pick(random, [1, 20]),
      },
    },
  };
  const pile = randomPile({ seed, boards, strips, thinner: -pick(random, [-2, 4, 8, 18]), settings });
  const scale = 0.65 + 0.4 * random();
  // Boards of one width: then two slides may be as near to the middle.
  const alike = random() < 0.15;
  const jointed = alike ? pile.boards.map((board) => ({ ...board, width: pile.boards[0]!.width })) : pile.boards;
  const pins = random() < 0.3 ? [{ mark: pile.boards[0]!.mark, strip: 1 + Math.floor(random() * strips) }] : [];
  return { ...pile, boards: jointed, width: pile.width * scale, ...(pins.length > 0 ? { pins } : {}) };
}
