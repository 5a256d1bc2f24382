import type { StripProblem, StripSettings, StripTerms } from '../../../lib/derive/lumber/strip-plan/strip-problem.ts';
import { STRIP_SETTINGS, STRIP_WEIGHTS } from '../../../lib/derive/lumber/strip-plan/strip-settings.ts';
import type { Board, Defect } from '../../../lib/model/records.ts';
import { pick, randomFrom } from '../../tables/random.ts';

/** Dressed thickness of the stock drawn from, mm: 5/4, 6/4 and 8/4, as if two layers were meant. Invented. */
const STOCK = [27, 33.3, 33.3, 44.45] as const;

/** Weights of the trial piles: shown defects count less than they do by default, so that more plans are near the best. */
export const TRIAL_WEIGHTS: StripTerms = { ...STRIP_WEIGHTS, shownDefects: 5 };

export interface RandomPile {
  readonly seed: number;
  readonly boards: number;
  readonly strips: number;
  /** mm off every board. */
  readonly thinner?: number;
  readonly settings?: Partial<StripSettings>;
}

/** A pile for the reading-room top (40 x 84 in, 2 1/4 in thick, 1 1/8 in at the edges), or for a narrow one with fewer strips. */
export function randomPile(pile: RandomPile): StripProblem {
  const random = randomFrom(pile.seed * 7919 + pile.boards);
  const width = 127 * pile.strips;
  return {
    width,
    length: 2133.6,
    centerThickness: 57.15,
    edgeThickness: 28.575,
    boards: Array.from({ length: pile.boards }, (_, i) => randomBoard(random, i, pile.thinner ?? 0)),
    settings: {
      ...STRIP_SETTINGS,
      strips: pile.strips,
      preference: { mode: 'weighted', weights: TRIAL_WEIGHTS },
      ...pile.settings,
    },
  };
}

function randomBoard(random: () => number, i: number, thinner: number): Board {
  const thickness = pick(random, STOCK) - 1 + 1.5 * random() - thinner;
  const width = 122 + 55 * random();
  const length = 2190 + 300 * random();
  const tone = random();
  const bark = random() < 0.5 ? 'A' : 'B';
  const defects = Array.from({ length: Math.floor(3 * random()) }, (): Defect => {
    const [from, near] = [random() * (length - 150), random() * (width - 60)];
    return {
      what: 'knot',
      from,
      to: from + 30 + 120 * random(),
      near,
      far: near + 10 + 50 * random(),
      face: pick(random, ['A', 'B'] as const),
      depth: 2 + 20 * random(),
    };
  });
  return { row: i + 2, mark: String(i + 1).padStart(2, '0'), thickness, width, length, bark, tone, defects };
}
