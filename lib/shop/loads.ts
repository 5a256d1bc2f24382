import { defineParams } from '../params/define-params.ts';
import { quantity } from '../params/fields.ts';
import type { Outcome } from '../params/read-values.ts';
import { type GivenFields, group, type ValuesOf } from '../params/spec.ts';
import { readOwn, valuesOrThrow } from './read-own.ts';

// Smardzewski, Furniture Design (Springer 2015), gives the loads of LC1 to LC4; the places are our convention. The person
// of LC5 is the mass of EN 1022. Other figures are our convention.

const FIELDS = {
  spread: quantity({ label: 'spread over the top', unit: 'kg', default: 100, min: 0, max: 1000 }),
  lean: quantity({ label: 'someone leaning on one spot', unit: 'N', default: 1000, min: 0, max: 5000 }),
  edge: quantity({ label: 'a weight near an edge', unit: 'N', default: 600, min: 0, max: 5000 }),
  push: quantity({ label: 'a level push at the top, often', unit: 'N', default: 300, min: 0, max: 2000 }),
  shove: quantity({ label: 'a level push at the top, once', unit: 'N', default: 400, min: 0, max: 3000 }),
  person: quantity({ label: 'someone sitting on the very edge', unit: 'kg', default: 110, min: 0, max: 300 }),
  lift: quantity({ label: 'lifted by the top, times the weight of the base', unit: '', default: 2, min: 1, max: 10 }),
};

const GROUPED = { loads: group('Loads', FIELDS) };

const loadParams = defineParams(GROUPED);

/** What a table must bear, in kg and N. */
export type Loads = ValuesOf<typeof FIELDS>;

export type LoadsGiven = GivenFields<typeof FIELDS>;

/** The `loads` of a design, whatever they are: their values, or all that is wrong with them. */
export const readLoads = (loads: unknown, from = 'the design file'): Outcome<typeof GROUPED> =>
  readOwn(loadParams, { loads }, from);

/** The loads of a design: the usual ones but for what is given. @throws IssuesError with all that is wrong. */
export const defineLoads = (given: LoadsGiven = {}): Loads => valuesOrThrow(readLoads(given), 'the loads').loads;
