import type { Climate } from '../../model/assembly.ts';
import { coefficientFromShrinkage } from '../../wood/movement-equations.ts';
import { acrossGrain, type Sawn, tangentialShare } from '../../wood/ring-angle.ts';
import type { Species, SpeciesField } from '../../wood/species.ts';
import type { SpeciesId } from '../../wood/species-id.ts';
import { speciesById } from '../../wood/species-list.ts';

/** How a wood changes across its grain. */
export interface Swelling {
  /** Change per length and percent of moisture, across the width of a board sawn so. */
  readonly perPercent: number;
  /** Percent of the green width, green to ovendry. */
  readonly shrinkage: number;
  /** Values of the wood that `perPercent` rests on. */
  readonly fields: readonly SpeciesField[];
}

type Direction = 'Radial' | 'Tangential';

/** Change across the grain: the printed coefficient (FPL-GTR-190 table 13-5), or the one that the shrinkage amounts to. */
export function swelling(wood: SpeciesId, sawn: Sawn): Swelling {
  const species = speciesById(wood);
  const share = tangentialShare(sawn);
  const directions: Direction[] = [
    ...(share < 1 ? ['Radial' as const] : []),
    ...(share > 0 ? ['Tangential' as const] : []),
  ];
  return {
    perPercent: acrossGrain(changeOf(species, 'Radial'), changeOf(species, 'Tangential'), sawn),
    shrinkage: acrossGrain(species.shrinkageRadial.value, species.shrinkageTangential.value, sawn),
    fields: directions.map((d) => (species[`change${d}`] ? (`change${d}` as const) : (`shrinkage${d}` as const))),
  };
}

/** Change per length and percent of moisture, along the rings or across them. */
export const changeOf = (species: Species, direction: Direction): number =>
  species[`change${direction}`]?.value ?? coefficientFromShrinkage(species[`shrinkage${direction}`].value);

/** Stiffness across the grain, MPa, and the values of the wood that it rests on. */
export function stiffnessAcross(
  species: Species,
  sawn: Sawn,
): { readonly value: number; readonly fields: SpeciesField[] } {
  const share = tangentialShare(sawn);
  const ratio = acrossGrain(species.erOverEl?.value ?? 0, species.etOverEl?.value ?? 0, sawn);
  const ratios: SpeciesField[] = [
    ...(share < 1 ? ['erOverEl' as const] : []),
    ...(share > 0 ? ['etOverEl' as const] : []),
  ];
  return { value: (species.moe?.value ?? 0) * ratio, fields: ['moe', ...ratios] };
}

/** Moisture at fixing with the ends of the range around it; a fixing outside the range widens it. */
export const moistureOf = ({ fitting, low, high }: Climate): { fitting: number; low: number; high: number } => ({
  fitting,
  low: Math.min(low, fitting),
  high: Math.max(high, fitting),
});

/** What every figure of movement rests on, in words. */
export const movementAssumptions = ({ low, high, sawn }: Climate): string[] => [
  `boards sawn ${typeof sawn === 'string' ? sawn : `with rings at ${sawn.ringAngle}° to the face`}, between ${low} and ${high} % of moisture`,
  'the change per percent is printed for 6 to 14 % and used over the whole range',
];
