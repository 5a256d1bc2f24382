import type { Mm } from '../units/mm.ts';
import { COEFFICIENT_RANGE, changeByCoefficient, changeByShrinkage } from './movement-equations.ts';
import { acrossGrain, type Sawn, tangentialShare } from './ring-angle.ts';
import type { Species, SpeciesField } from './species.ts';

export interface MovementOptions {
  /** The dimension across the grain at the first moisture. */
  readonly dimension: Mm;
  readonly sawn: Sawn;
  /** Moisture before and after, percent, 0 to 30. */
  readonly from: number;
  readonly to: number;
}

export interface Movement {
  /** mm, negative when it shrinks. */
  readonly change: Mm;
  /** Eq 13-2 where both moistures lie between 6 and 14 % and its coefficients are known, otherwise Eq 13-3. */
  readonly equation: 'Eq 13-2' | 'Eq 13-3';
  /** The values of the species that it rests on. */
  readonly basis: readonly SpeciesField[];
}

/**
 * Swelling or shrinking of a dimension across the grain. The handbook cautions that boards are rarely perfectly flat- or
 * quarter-sawn, so that widths are probably overestimated and thicknesses underestimated.
 *
 * Where a coefficient is that of a commercial group, the two equations do not quite meet at 6 and 14 %.
 */
export function movement(species: Species, options: MovementOptions): Movement {
  const { dimension, sawn, from, to } = options;
  const needed = directions(sawn);
  const { changeRadial, changeTangential } = species;
  const between = (moisture: number) => moisture >= COEFFICIENT_RANGE.low && moisture <= COEFFICIENT_RANGE.high;
  const known = needed.every((direction) => species[`change${direction}`] !== undefined);
  if (known && between(from) && between(to)) {
    const coefficient = acrossGrain(changeRadial?.value ?? 0, changeTangential?.value ?? 0, sawn);
    return {
      change: changeByCoefficient(dimension, coefficient, from, to),
      equation: 'Eq 13-2',
      basis: needed.map((direction) => `change${direction}` as const),
    };
  }
  return {
    change: acrossGrain(
      changeByShrinkage(dimension, species.shrinkageRadial.value, from, to),
      changeByShrinkage(dimension, species.shrinkageTangential.value, from, to),
      sawn,
    ),
    equation: 'Eq 13-3',
    basis: needed.map((direction) => `shrinkage${direction}` as const),
  };
}

function directions(sawn: Sawn): readonly ('Radial' | 'Tangential')[] {
  const share = tangentialShare(sawn);
  if (share === 1) return ['Tangential'];
  return share === 0 ? ['Radial'] : ['Radial', 'Tangential'];
}
