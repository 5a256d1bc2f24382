import { defineParams } from '../params/define-params.ts';
import { choice, count, flag, length, quantity, text } from '../params/fields.ts';
import type { Outcome } from '../params/read-values.ts';
import { type GivenFields, group, type ValuesOf } from '../params/spec.ts';
import { readOwn, valuesOrThrow } from './read-own.ts';

const weight = (label: string, value: number) => quantity({ label, unit: '', default: value, min: 0, max: 10_000 });

// Weights: our convention, those of the strip plan.

const FIELDS = {
  layers: choice({ label: 'boards of a strip, one over the other', options: ['one', 'two', 'either'], default: 'one' }),
  rings: choice({ label: 'ring direction of neighbors', options: ['alternate', 'ignore'], default: 'alternate' }),
  leastWidth: length({ label: 'narrowest strip', default: '2 in', min: '1/2 in', max: '20 in' }),
  strips: count({ label: 'strips of the top; 0 for as many as drawn', default: 0, min: 0, max: 20 }),
  preference: choice({
    label: 'how wishes are set against each other',
    options: ['weighted', 'ordered'],
    default: 'weighted',
  }),
  weights: group('Cost of one unit of each', {
    reserve: weight('mm of reserve that is missing', 4),
    shownDefects: weight('dm2 of defects on the show face', 50),
    undersideDefects: weight('dm2 of defects on the underside', 1),
    rings: weight('pair of neighbors alike in ring direction', 2),
    tone: weight('difference of tone, light to dark', 20),
    volume: weight('liter of wood, thick boards more', 0.25),
    symmetry: weight('cm of difference between mirrored strips', 0),
  }),
  matchPosts: flag({ label: 'posts of one frame from one board', default: false }),
  pinned: text({ label: 'boards settled by hand: 3 strip 2; 7 show, A up, turned', default: '', maxLength: 2000 }),
};

const GROUPED = { lumber: group('Lumber', FIELDS) };

const wishParams = defineParams(GROUPED);

/** How the maker wants boards to be used for a design. Lengths in mm. */
export type LumberWishes = ValuesOf<typeof FIELDS>;

export type LumberWishesGiven = GivenFields<typeof FIELDS>;

/** The `lumber` of a design, whatever it is: its values, or all that is wrong with them. */
export const readLumberWishes = (lumber: unknown, from = 'the design file'): Outcome<typeof GROUPED> =>
  readOwn(wishParams, { lumber }, from);

/** @throws IssuesError with all that is wrong. */
export const defineLumberWishes = (given: LumberWishesGiven = {}): LumberWishes =>
  valuesOrThrow(readLumberWishes(given), 'the lumber').lumber;
