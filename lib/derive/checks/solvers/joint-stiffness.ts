import type { Mm } from '../../../units/mm.ts';
import { positive } from '../../../wood/in-range.ts';
import { type Figure, ours } from './ours.ts';

/**
 * Share of E_T b d² that a joint keeps as stiffness: the ends of what a glued joint may do, by a plane model of it
 * (computed, never measured). Calculate with both, judge by the lower.
 */
export const GLUED_GRIP: Figure<{ readonly low: number; readonly high: number }> = {
  value: { low: 0.15, high: 0.6 },
  status: 'computed',
  source: 'plane model of a glued joint; unmeasured',
};

/** The same for a joint that is only bolted or dry. */
export const DRY_GRIP: Figure = ours(0.015, 'our convention for unglued and knock-down joints');

export interface JointStiffnessOptions {
  /** Share of E_T b d², 0.15 to 0.6 for a glued joint. */
  readonly grip: number;
  /** E across the grain of the mortised part, MPa. */
  readonly across: number;
  /** Of the butting part, not above that of its mate. */
  readonly thickness: Mm;
  /** Of the butting part, in the plane in which the joint turns. */
  readonly depth: Mm;
}

/** Stiffness of a joint against turning, N mm/rad: k = β E_T b d². */
export function jointStiffness({ grip, across, thickness, depth }: JointStiffnessOptions): number {
  positive('grip', grip, '');
  return grip * positive('E across', across, ' MPa') * thickness * positive('depth', depth, ' mm') ** 2;
}
