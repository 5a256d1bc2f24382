import type { SpeciesId } from '../../lib/wood/species-id.ts';

/** A figure as printed; as text with a question mark where it is remembered and still to be confirmed; null where absent. */
export type Figure = number | `${number}?` | null;

/**
 * S_R, S_T, S_V (percent, FPL-GTR-190 tables 4-3 and 4-4), C_R, C_T (FPL-GTR-190 table 13-5), specific gravity green and
 * at 12 % (FPL-GTR-282 tables 5-3b and 5-5b).
 */
export const MOVEMENT_PRINTED: { readonly [Id in SpeciesId]: readonly Figure[] } = {
  beech: [5.5, 11.9, 17.2, 0.0019, 0.00431, 0.56, 0.64],
  cherry: [3.7, 7.1, 11.5, 0.00126, 0.00248, 0.47, 0.5],
  'douglas-fir': [4.8, 7.6, 12.4, '0.00165?', 0.00267, 0.45, 0.48],
  elm: [4.2, 9.5, 14.6, 0.00144, 0.00338, 0.46, 0.5],
  hickory: ['7?', '10.5?', '16.7?', '0.00259?', 0.00411, 0.64, 0.72],
  mahogany: ['3?', '4.1?', '7.8?', null, null, 0.45, null],
  'red-maple': ['4?', '8.2?', '12.6?', 0.00137, 0.00289, 0.49, 0.54],
  'red-oak': [4, 8.6, 13.7, 0.00158, 0.00369, 0.56, 0.63],
  'sugar-maple': [4.8, 9.9, 14.7, 0.00165, 0.00353, 0.56, 0.63],
  teak: ['2.5?', '5.8?', '7?', '0.00101?', 0.00186, 0.55, null],
  walnut: [5.5, 7.8, 12.8, 0.0019, 0.00274, 0.51, 0.55],
  'white-ash': [4.9, 7.8, 13.3, 0.00169, 0.00274, 0.55, 0.6],
  'white-oak': [5.6, 10.5, 16.3, 0.0018, 0.00365, 0.6, 0.68],
  'yellow-birch': [7.3, 9.5, 16.8, 0.00256, 0.00338, 0.55, 0.62],
  'yellow-poplar': [4.6, 8.2, 12.7, '0.00158?', '0.00289?', 0.4, 0.42],
};

/** E_T, E_R, G_LR, G_LT over E_L: FPL-GTR-282 table 5-1. */
export const ELASTIC_PRINTED: { readonly [Id in SpeciesId]?: readonly Figure[] } = {
  cherry: ['0.086?', '0.197?', '0.147?', '0.097?'],
  'douglas-fir': [0.05, 0.068, 0.064, 0.078],
  mahogany: ['0.064?', '0.107?', '0.066?', '0.086?'],
  'red-maple': ['0.067?', '0.14?', '0.133?', '0.074?'],
  'red-oak': [0.082, 0.154, '0.089?', '0.081?'],
  'sugar-maple': [0.065, 0.132, '0.111?', '0.063?'],
  walnut: ['0.056?', '0.106?', '0.085?', '0.062?'],
  'white-ash': ['0.08?', '0.125?', '0.109?', '0.077?'],
  'white-oak': [0.072, 0.163, '0.086?', null],
  'yellow-birch': ['0.05?', '0.078?', '0.074?', '0.068?'],
  'yellow-poplar': ['0.043?', '0.092?', '0.075?', '0.069?'],
};

/** Poisson's ratios LR, LT, RT, TR, RL, TL: FPL-GTR-282 table 5-2, every one remembered. */
export const POISSON_REMEMBERED: { readonly [Id in SpeciesId]?: readonly number[] } = {
  cherry: [0.392, 0.428, 0.695, 0.282, 0.086, 0.048],
  'douglas-fir': [0.292, 0.449, 0.39, 0.374, 0.036, 0.029],
  mahogany: [0.314, 0.533, 0.6, 0.326, 0.033, 0.034],
  // biome-ignore lint/suspicious/noApproximativeNumericConstant: a measured ratio, near log10(e) by chance
  'red-maple': [0.434, 0.509, 0.762, 0.354, 0.063, 0.044],
  'red-oak': [0.35, 0.448, 0.56, 0.292, 0.064, 0.033],
  'sugar-maple': [0.424, 0.476, 0.774, 0.349, 0.065, 0.037],
  walnut: [0.495, 0.632, 0.718, 0.378, 0.052, 0.035],
  'white-ash': [0.371, 0.44, 0.684, 0.36, 0.059, 0.051],
  'white-oak': [0.369, 0.428, 0.618, 0.3, 0.074, 0.036],
  'yellow-birch': [0.426, 0.451, 0.697, 0.426, 0.043, 0.024],
  'yellow-poplar': [0.318, 0.392, 0.703, 0.329, 0.03, 0.019],
};
