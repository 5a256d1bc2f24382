import type { Mm } from '../../../units/mm.ts';
import { inRange, positive } from '../../../wood/in-range.ts';
import { type Figure, ours } from './ours.ts';

/** Moisture in percent at fixing, and the ends of what the piece will see. */
export const USUAL_MOISTURE: Figure<{ readonly fitting: number; readonly low: number; readonly high: number }> = ours(
  { fitting: 7.5, low: 5, high: 11 },
  'our convention',
);

/** Room in a slot beyond shank and travel: 1/16 in. */
export const SLOT_PLAY: Figure<Mm> = ours(1.5875, 'our convention, 1/16 in');

/** How far the wood at a screw moves away from and towards the point that stays put. */
export interface Travel {
  readonly outward: Mm;
  readonly inward: Mm;
}

/** A slot across the grain, in the part that does not move. */
export interface Slot {
  readonly length: Mm;
  /** From the screw to the middle of the slot, away from the fixed point: the screw sits this much nearer to it. */
  readonly offset: Mm;
}

export interface TravelOptions {
  /** From the fixed point to the screw. */
  readonly distance: Mm;
  /** Change per length and percent of moisture, C_T for a flat-sawn top. */
  readonly perPercent: number;
  readonly moisture: { readonly fitting: number; readonly low: number; readonly high: number };
}

/** @throws RangeError when the moisture at fixing lies outside the range. */
export function screwTravel({ distance, perPercent, moisture }: TravelOptions): Travel {
  const { fitting, low, high } = moisture;
  inRange('moisture at fixing', fitting, low, high, ' %');
  const each = distance * positive('change', perPercent, ' per %');
  return { outward: each * (high - fitting), inward: each * (fitting - low) };
}

/**
 * The slot that a screw needs: shank + outward + inward + play.
 *
 * ```
 *   fixed point ◄── inward │ screw │ outward ──►
 *                   (═══════●══════════════)
 * ```
 */
export function slotFor(shank: Mm, { outward, inward }: Travel, play: Mm = SLOT_PLAY.value): Slot {
  return { length: shank + outward + inward + play, offset: (outward - inward) / 2 };
}

/** mm that a slot leaves at its tighter end when the wood has gone as far as it will; negative when the screw stops it. */
export function slotSlack(slot: Slot, shank: Mm, { outward, inward }: Travel): Mm {
  const half = (slot.length - shank) / 2;
  return Math.min(half + slot.offset - outward, half - slot.offset - inward);
}
