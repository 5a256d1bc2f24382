import type { Mm } from '../../../units/mm.ts';
import { cup } from '../../../wood/cup.ts';
import { positive } from '../../../wood/in-range.ts';

export interface StaveCupOptions {
  readonly width: Mm;
  /** From the pith to the face that is judged. */
  readonly ringRadius: Mm;
  /** Change per length and percent of moisture, along and across the rings. */
  readonly tangential: number;
  readonly radial: number;
  /** Percent; the sign does not matter for the small-angle form. */
  readonly moistureChange: number;
}

/** Cup of one stave for small angles, mm, always positive: |C_T - C_R| |ΔM| w²/4R. On the high side. */
export function staveCupSmall({ width, ringRadius, tangential, radial, moistureChange }: StaveCupOptions): Mm {
  const strain = Math.abs(tangential - radial) * Math.abs(moistureChange);
  return (strain * width ** 2) / (4 * positive('ring radius', ringRadius, ' mm'));
}

/** The same exactly, mm: positive when the bark side turns hollow, as in drying. */
export function staveCup({ width, ringRadius, tangential, radial, moistureChange }: StaveCupOptions): Mm {
  return cup({
    width,
    pithDistance: ringRadius,
    radialStrain: radial * moistureChange,
    tangentialStrain: tangential * moistureChange,
  });
}

export interface OneSidedCupOptions {
  readonly width: Mm;
  readonly thickness: Mm;
  /** Change per length and percent of moisture, across the grain. */
  readonly perPercent: number;
  /** Percent by which one face is drier than the other. */
  readonly moistureDifference: number;
}

/** Cup of a free top with one face drier, mm: C ΔM W²/8t. The drier face turns hollow. */
export function oneSidedCup({ width, thickness, perPercent, moistureDifference }: OneSidedCupOptions): Mm {
  const strain = perPercent * Math.abs(moistureDifference);
  return (strain * width ** 2) / (8 * positive('thickness', thickness, ' mm'));
}
