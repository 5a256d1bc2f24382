import type { StripSettings, StripTerm, StripTerms } from './strip-problem.ts';

/**
 * Cost of one unit of each term: our convention. A knot of a square inch that shows costs as much as 0.16 of tone, so that what
 * must not show does so only where there is no other way. Symmetry is a wish, off by default.
 */
export const STRIP_WEIGHTS: StripTerms = {
  reserve: 4,
  shownDefects: 50,
  undersideDefects: 1,
  rings: 2,
  tone: 20,
  volume: 0.25,
  symmetry: 0,
};

/** The order in which terms decide when they are not weighed: what spoils the top first (our convention). */
export const STRIP_ORDER: readonly StripTerm[] = [
  'reserve',
  'shownDefects',
  'rings',
  'tone',
  'volume',
  'undersideDefects',
  'symmetry',
];

/** When terms decide in order, differences smaller than these do not count (our convention). */
export const STEP: StripTerms = {
  reserve: 0.5,
  shownDefects: 0.1,
  undersideDefects: 0.1,
  rings: 1,
  tone: 0.05,
  volume: 0.5,
  symmetry: 1,
};

/** Common practice, no source, where nothing else is said. */
export const STRIP_SETTINGS: StripSettings = {
  strips: 8,
  layers: 'either',
  kerf: 3.175,
  jointing: 0.79375,
  edgeTrim: 3.175,
  cleanUp: 1.5875,
  leastWidth: 50.8,
  leastHalf: 0,
  seamOnCenterLine: false,
  rings: 'alternate',
  scarceFrom: 50.8,
  scarcePremium: 0.3,
  reserveCap: 3,
  preference: { mode: 'weighted', weights: STRIP_WEIGHTS },
};
