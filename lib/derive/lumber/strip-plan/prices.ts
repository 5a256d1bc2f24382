import type { Board } from '../../../model/records.ts';
import type { StripPreference, StripProblem, StripSettings, StripTerm, StripTerms } from './strip-problem.ts';
import { STEP } from './strip-settings.ts';

/** Cost of a unit of each term, and how the unit is counted. */
export interface Prices {
  readonly of: StripTerms;
  /** Rounds a share of a term to the steps that count; itself when terms are weighed. */
  readonly counted: (term: StripTerm, value: number) => number;
  /** Plans closer than this in cost are alike. */
  readonly alike: number;
}

const NONE: StripTerms = {
  reserve: 0,
  shownDefects: 0,
  undersideDefects: 0,
  rings: 0,
  tone: 0,
  volume: 0,
  symmetry: 0,
};

/** mm² in a dm², mm³ in a litre. */
export const MM2_PER_DM2 = 1e4;
export const MM3_PER_LITRE = 1e6;

/** Prices of a preference; those of ordered terms are steps of a staircase: one step of a term outweighs all later terms. */
export function pricesOf(problem: StripProblem): Prices {
  const { preference, rings } = problem.settings;
  const priced = preference.mode === 'weighted' ? weighted(preference.weights) : ordered(problem, preference);
  return rings === 'ignore' ? { ...priced, of: { ...priced.of, rings: 0 } } : priced;
}

const weighted = (weights: StripTerms): Prices => ({ of: weights, counted: (_, value) => value, alike: 1e-6 });

function ordered(problem: StripProblem, preference: Extract<StripPreference, { mode: 'ordered' }>): Prices {
  const most = mostSteps(problem);
  const of: Record<StripTerm, number> = { ...NONE };
  let below = 1;
  for (const term of [...preference.order].reverse()) {
    of[term] = below / STEP[term];
    below *= most[term] + 1;
  }
  const counted = (term: StripTerm, value: number): number => {
    const steps = value / STEP[term];
    // Missing reserve counts whole steps upward; shares of sums go to the nearest step.
    return STEP[term] * (term === 'reserve' ? Math.ceil(steps - 1e-9) : Math.round(steps));
  };
  return { of, counted, alike: 1e-3 };
}

/** No plan can have more steps of a term than these. */
function mostSteps(problem: StripProblem): StripTerms {
  const { boards, settings } = problem;
  const used = Math.min(boards.length, 2 * settings.strips);
  const largest = (value: (board: StripProblem['boards'][number]) => number): number =>
    boards
      .map(value)
      .sort((a, b) => b - a)
      .slice(0, used)
      .reduce((sum, v) => sum + v, 0);
  const defects = largest((b) => b.defects.reduce((s, d) => s + ((d.to - d.from) * (d.far - d.near)) / MM2_PER_DM2, 0));
  const amounts: StripTerms = {
    reserve: settings.reserveCap,
    shownDefects: defects,
    undersideDefects: defects,
    rings: settings.strips,
    tone: settings.strips,
    volume: largest((b) => litres(b, settings)),
    symmetry: largest((b) => b.width) / 10,
  };
  const steps = { ...amounts };
  for (const term of Object.keys(steps) as StripTerm[]) steps[term] = Math.ceil(amounts[term] / STEP[term]) + used;
  return steps;
}

/** Litres of a board, scarce thick stock counted up; what was milled off it is spent with it. */
export const litres = (
  board: Pick<Board, 'thickness' | 'milledFrom' | 'width' | 'length'>,
  settings: Pick<StripSettings, 'scarceFrom' | 'scarcePremium'>,
): number => {
  const thickness = Math.max(board.thickness, board.milledFrom ?? 0);
  const scarce = thickness >= settings.scarceFrom ? 1 + settings.scarcePremium : 1;
  return ((thickness * board.width * board.length) / MM3_PER_LITRE) * scarce;
};
