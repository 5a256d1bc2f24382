import { FIBER_SATURATION } from './fiber-saturation.ts';
import { inRange } from './in-range.ts';
import { computed, type Sourced } from './sourced.ts';
import type { Species } from './species.ts';

/**
 * Density in kg/m³ at a moisture in percent, up to fiber saturation; 12 % is the reference for mass.
 *
 * At 12 %: 1000 G (1 + M/100), Eq 4-14, with the printed G. Elsewhere G follows the volume, which shrinks in a straight
 * line from 30 % to ovendry by the printed volumetric shrinkage (Eq 4-9, 4-10). A wood without printed G at 12 % gets it
 * from the green one by Eq 4-13 and says so. Handled: seasoned wood; not handled: free water above 30 %.
 */
export function density(species: Species, moisturePercent = 12): Sourced<number> {
  inRange('moisture', moisturePercent, 0, FIBER_SATURATION, ' %');
  const volumetric = species.shrinkageVolumetric?.value;
  const { gravity, caution } = gravity12(species);
  if (moisturePercent === 12) return computed(gravity * (1000 + 10 * 12), 'FPL-GTR-282 Eq 4-14', caution);
  if (volumetric === undefined) throw new RangeError(`${species.name} has no volumetric shrinkage; ask for 12 %`);
  const shrunk = (moisture: number) => volumetric * (1 - moisture / FIBER_SATURATION);
  const there = (gravity * (100 - shrunk(12))) / (100 - shrunk(moisturePercent));
  return computed(there * (1000 + 10 * moisturePercent), 'FPL-GTR-282 Eq 4-9, 4-10 and 4-14', caution);
}

function gravity12(species: Species): { gravity: number; caution?: string } {
  if (species.specificGravity12) return { gravity: species.specificGravity12.value };
  const green = species.specificGravityGreen?.value;
  if (green === undefined) throw new RangeError(`${species.name} has no specific gravity, so no density`);
  return {
    gravity: green / (1 - 0.265 * green * (1 - 12 / FIBER_SATURATION)),
    caution: 'from the green specific gravity by Eq 4-13, which misses printed figures by up to 0.025',
  };
}
