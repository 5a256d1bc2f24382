import { positive } from '../../../wood/in-range.ts';
import { type ScrewWithdrawal, screwWithdrawal } from '../../../wood/screw-withdrawal.ts';
import type { Figure } from './ours.ts';

/** N and mm; 2850 G² D in pounds and inches. */
export const ALLOWABLE_WITHDRAWAL_FACTOR: Figure = {
  value: 19.65,
  status: 'read',
  source: 'National Design Specification for Wood Construction, read second-hand',
};

/** What a wood screw holds along its axis, N. */
export interface ScrewHold {
  readonly allowable: number;
  /** On average, when it comes out. */
  readonly ultimate: number;
}

/**
 * Allowable 19.65 G² D L and ultimate 108.25 G² D L of a screw in side grain. Both with G at 12 %, which is on the low
 * side for the first (it is defined on the ovendry volume); our convention. Never for end grain: there the National
 * Design Specification allows no withdrawal at all.
 */
export function screwHold(screw: ScrewWithdrawal): ScrewHold {
  const ultimate = screwWithdrawal(screw);
  const gravity = positive('specific gravity', screw.specificGravity12, '');
  return { allowable: ALLOWABLE_WITHDRAWAL_FACTOR.value * gravity ** 2 * screw.shank * screw.thread, ultimate };
}
