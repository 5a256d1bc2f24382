import type { Sourced } from './sourced.ts';
import type { SpeciesId } from './species-id.ts';

/**
 * What is known of a wood: averages of clear, straight-grained wood, not design values. A value that is not printed or
 * was not read is absent, never guessed. Strength and stiffness are at 12 % moisture unless the name says green.
 */
export interface SpeciesValues {
  /** Percent of the green dimension, green to ovendry, across the rings. */
  readonly shrinkageRadial: Sourced<number>;
  /** Percent of the green dimension, green to ovendry, along the rings. */
  readonly shrinkageTangential: Sourced<number>;
  /** Percent of the green volume, green to ovendry. */
  readonly shrinkageVolumetric?: Sourced<number>;
  /** C_R: fraction of the dimension per 1 % moisture, both moistures between 6 and 14 %. */
  readonly changeRadial?: Sourced<number>;
  /** C_T: the same along the rings. */
  readonly changeTangential?: Sourced<number>;
  /** Ovendry mass over green volume, relative to water (basic specific gravity). */
  readonly specificGravityGreen?: Sourced<number>;
  /** Ovendry mass over volume at 12 %; the G of the handbook's fastener formulas, not the ovendry-volume G of the NDS. */
  readonly specificGravity12?: Sourced<number>;
  /** kg/m³ at 12 % moisture: the reference figure for mass. */
  readonly density12?: Sourced<number>;
  /** Modulus of rupture, MPa. */
  readonly mor?: Sourced<number>;
  readonly morGreen?: Sourced<number>;
  /** Apparent bending modulus along the grain, MPa, from span/depth 14: shear is already in it. */
  readonly moe?: Sourced<number>;
  readonly moeGreen?: Sourced<number>;
  /** MPa, greatest crushing strength along the grain. */
  readonly compressionParallel?: Sourced<number>;
  /** MPa, proportional limit across the grain. */
  readonly compressionPerpendicular?: Sourced<number>;
  /** MPa, along the grain. */
  readonly shear?: Sourced<number>;
  /** MPa, greatest tension across the grain. */
  readonly tensionPerpendicular?: Sourced<number>;
  /** N, side hardness by the Janka ball. */
  readonly hardness?: Sourced<number>;
  /** Moisture in percent below which strength rises as wood dries: M_p of Eq 5-3. */
  readonly intersectionMoisture?: Sourced<number>;
  /** E_T / E_L. */
  readonly etOverEl?: Sourced<number>;
  /** E_R / E_L. */
  readonly erOverEl?: Sourced<number>;
  /** G_LR / E_L. */
  readonly glrOverEl?: Sourced<number>;
  /** G_LT / E_L. */
  readonly gltOverEl?: Sourced<number>;
  /** G_RT / E_L. */
  readonly grtOverEl?: Sourced<number>;
  /** Poisson's ratios: the first letter is the direction of the stress, the second that of the passive strain. */
  readonly poissonLR?: Sourced<number>;
  readonly poissonLT?: Sourced<number>;
  readonly poissonRT?: Sourced<number>;
  readonly poissonTR?: Sourced<number>;
  readonly poissonRL?: Sourced<number>;
  readonly poissonTL?: Sourced<number>;
}

/** The name of a value of a species. */
export type SpeciesField = keyof SpeciesValues;

export interface Species extends SpeciesValues {
  readonly id: SpeciesId;
  /** Trade name: `black cherry`. */
  readonly name: string;
  readonly scientificName: Sourced<string>;
  readonly kind: 'hardwood' | 'softwood';
}
