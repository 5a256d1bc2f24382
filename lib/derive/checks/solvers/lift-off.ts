import type { Mm } from '../../../units/mm.ts';
import { positive } from '../../../wood/in-range.ts';
import { type Figure, ours } from './ours.ts';

/** A table lifted by its top jerks: the screws carry this many times the weight of the base. */
export const LIFT_FACTOR: Figure = ours(2, 'our convention');

/** Least number of screws in a frame, in two rows. */
export const LEAST_SCREWS_A_FRAME: Figure = ours(4, 'our convention');

export interface LiftScrewsOptions {
  /** N. */
  readonly baseWeight: number;
  /** N that one screw may carry. */
  readonly allowable: number;
  readonly frames: number;
}

/** How many screws hold the base when the table is lifted by its top. */
export interface LiftScrews {
  /** N on all screws together. */
  readonly load: number;
  /** By strength alone. */
  readonly byLoad: number;
  /** Also by the least number in a frame. */
  readonly screws: number;
}

export function liftScrews({ baseWeight, allowable, frames }: LiftScrewsOptions): LiftScrews {
  const load = LIFT_FACTOR.value * positive('weight of the base', baseWeight, ' N');
  const byLoad = Math.ceil(load / positive('allowable load', allowable, ' N') - 1e-9);
  return { load, byLoad, screws: Math.max(byLoad, frames * LEAST_SCREWS_A_FRAME.value) };
}

/**
 * N by which a load at the tip of an overhang lifts the top off the far support: P a/S less what the top puts on it.
 * Negative while it stays down.
 *
 * @param dead N of the top on the far support.
 */
export function farUplift(load: number, overhang: Mm, span: Mm, dead: number): number {
  return (load * overhang) / positive('span', span, ' mm') - dead;
}
