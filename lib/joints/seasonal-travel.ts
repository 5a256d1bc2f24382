import type { Climate } from '../model/assembly.ts';
import type { Mm } from '../units/mm.ts';
import { coefficientFromShrinkage } from '../wood/movement-equations.ts';
import { acrossGrain } from '../wood/ring-angle.ts';
import type { SpeciesId } from '../wood/species-id.ts';
import { speciesById } from '../wood/species-list.ts';

/**
 * How far a point of a top moves away from and towards the line that stays put, mm.
 *
 * The coefficient of Eq 13-2 (Wood Handbook FPL-GTR-190 table 13-5) is used over the whole range. It is printed for 6 to
 * 14 %; down to 4 % it stays within 2 % of Eq 13-3 for the woods here (computed). Where no coefficient is printed, it is
 * computed from the shrinkage.
 */
export function seasonalTravel(
  wood: SpeciesId,
  fromCenter: Mm,
  climate: Climate,
): { readonly outward: Mm; readonly inward: Mm } {
  const s = speciesById(wood);
  const radial = s.changeRadial?.value ?? coefficientFromShrinkage(s.shrinkageRadial.value);
  const tangential = s.changeTangential?.value ?? coefficientFromShrinkage(s.shrinkageTangential.value);
  const perPercent = fromCenter * acrossGrain(radial, tangential, climate.sawn);
  return {
    outward: perPercent * Math.max(0, climate.high - climate.fitting),
    inward: perPercent * Math.max(0, climate.fitting - climate.low),
  };
}
