import { inRange, positive } from './in-range.ts';
import { computed, type Sourced } from './sourced.ts';
import type { Species } from './species.ts';

/**
 * A strength or stiffness at another moisture: FPL-GTR-282 Eq 5-3 (public copy),
 * P = P12 (P12 / Pg)^((12 - M) / (M_p - 12)), up to M_p, where it has come down to the green value.
 *
 * Handled: bending strength and modulus, crushing; not handled, by the handbook's own word: work, impact, tension across
 * the grain.
 */
export function atMoisture(p12: number, pGreen: number, moisturePercent: number, intersection = 25): number {
  positive('value at 12 %', p12, '');
  positive('green value', pGreen, '');
  inRange('moisture', moisturePercent, 0, intersection, ' %');
  return p12 * (p12 / pGreen) ** ((12 - moisturePercent) / (intersection - 12));
}

/** Bending strength or modulus of a wood at a moisture in percent, MPa; undefined where one of its values is missing. */
export function bendingAtMoisture(
  species: Species,
  field: 'mor' | 'moe',
  moisturePercent: number,
): Sourced<number> | undefined {
  const dry = species[field];
  const green = species[`${field}Green`];
  const intersection = species.intersectionMoisture;
  if (!(dry && green && intersection)) return undefined;
  const value = atMoisture(dry.value, green.value, moisturePercent, intersection.value);
  return computed(value, 'FPL-GTR-282 Eq 5-3', dry.caution);
}
