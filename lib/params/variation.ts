import type { Value } from './param.ts';

/** A parameter, and the values at which a piece is tried, in the order in which they were asked for. */
export interface Variation {
  readonly path: string;
  readonly values: readonly Value[];
}

/** Most values of one parameter, most parameters at once, most pieces in all: what a table can hold and a maker waits for. */
export const MOST_VALUES = 25;
export const MOST_VARIED = 2;
export const MOST_TRIALS = 100;

/** Values of a range that does not say how many. */
export const USUAL_VALUES = 5;
