import type { SpeciesField } from './species.ts';

/** What a value of a species is called in a sentence: `needs the tension strength across the grain`. */
export const FIELD_LABELS: { readonly [F in SpeciesField]: string } = {
  shrinkageRadial: 'radial shrinkage',
  shrinkageTangential: 'tangential shrinkage',
  shrinkageVolumetric: 'volumetric shrinkage',
  changeRadial: 'radial change coefficient',
  changeTangential: 'tangential change coefficient',
  specificGravityGreen: 'specific gravity, green',
  specificGravity12: 'specific gravity at 12 %',
  density12: 'density at 12 %',
  mor: 'bending strength',
  morGreen: 'bending strength, green',
  moe: 'bending modulus',
  moeGreen: 'bending modulus, green',
  compressionParallel: 'crushing strength along the grain',
  compressionPerpendicular: 'compression limit across the grain',
  shear: 'shear strength along the grain',
  tensionPerpendicular: 'tension strength across the grain',
  hardness: 'side hardness',
  intersectionMoisture: 'intersection moisture',
  etOverEl: 'elastic ratio E_T/E_L',
  erOverEl: 'elastic ratio E_R/E_L',
  glrOverEl: 'elastic ratio G_LR/E_L',
  gltOverEl: 'elastic ratio G_LT/E_L',
  grtOverEl: 'elastic ratio G_RT/E_L',
  poissonLR: "Poisson's ratio LR",
  poissonLT: "Poisson's ratio LT",
  poissonRT: "Poisson's ratio RT",
  poissonTR: "Poisson's ratio TR",
  poissonRL: "Poisson's ratio RL",
  poissonTL: "Poisson's ratio TL",
};

/** The names of all values that a species can have. */
export const SPECIES_FIELDS = Object.keys(FIELD_LABELS) as readonly SpeciesField[];
