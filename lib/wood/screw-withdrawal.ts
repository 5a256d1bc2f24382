import type { Mm } from '../units/mm.ts';
import { positive } from './in-range.ts';
import { read, type Sourced } from './sourced.ts';

export interface ScrewWithdrawal {
  /** On the volume at 12 % moisture: `specificGravity12`, never the ovendry-volume figure of the NDS. */
  readonly specificGravity12: number;
  /** Shank diameter. */
  readonly shank: Mm;
  /** Length of thread in the wood. */
  readonly thread: Mm;
}

/** N and mm. */
export const SCREW_WITHDRAWAL_FACTOR: Sourced<number> = read(108.25, 'FPL-GTR-282 Eq 8-10 (public copy)');

/**
 * Load in N that pulls a wood screw out: Eq 8-10, p = 108.25 G² D L. It is the ultimate load, on average, in the side
 * grain of seasoned wood with a proper lead hole; not a working load.
 */
export function screwWithdrawal({ specificGravity12, shank, thread }: ScrewWithdrawal): number {
  const gravity = positive('specific gravity', specificGravity12, '');
  return (
    SCREW_WITHDRAWAL_FACTOR.value * gravity ** 2 * positive('shank', shank, ' mm') * positive('thread', thread, ' mm')
  );
}
