import type { SpeciesId } from '../../lib/wood/species-id.ts';

/** One wood of the metric table: green, then 12 %. */
export interface Metric {
  readonly specificGravity: readonly [number, number];
  /** kPa. */
  readonly mor: readonly [number, number];
  /** MPa. */
  readonly moe: readonly [number, number];
  /** At 12 %, kPa: along, across, shear, tension across; N: hardness. */
  readonly dry: readonly [number, number, number, number | null, number];
}

/** FPL-GTR-282 table 5-3a, in a public copy other than the one that the inch-pound figures come from. */
export const TABLE_5_3A_PRINTED: { readonly [Id in SpeciesId]?: Metric } = {
  'white-ash': {
    specificGravity: [0.55, 0.6],
    mor: [66000, 106000],
    moe: [9900, 12000],
    dry: [51100, 8000, 13200, 6500, 5900],
  },
  cherry: {
    specificGravity: [0.47, 0.5],
    mor: [55000, 85000],
    moe: [9000, 10300],
    dry: [49000, 4800, 11700, 3900, 4200],
  },
  'sugar-maple': {
    specificGravity: [0.56, 0.63],
    mor: [65000, 109000],
    moe: [10700, 12600],
    dry: [54000, 10100, 16100, null, 6400],
  },
  'red-oak': {
    specificGravity: [0.56, 0.63],
    mor: [57000, 99000],
    moe: [9300, 12500],
    dry: [46600, 7000, 12300, 5500, 5700],
  },
  'white-oak': {
    specificGravity: [0.6, 0.68],
    mor: [57000, 105000],
    moe: [8600, 12300],
    dry: [51300, 7400, 13800, 5500, 6000],
  },
  'yellow-poplar': {
    specificGravity: [0.4, 0.42],
    mor: [41000, 70000],
    moe: [8400, 10900],
    dry: [38200, 3400, 8200, 3700, 2400],
  },
  'douglas-fir': {
    specificGravity: [0.45, 0.48],
    mor: [53000, 85000],
    moe: [10800, 13400],
    dry: [49900, 5500, 7800, 2300, 3200],
  },
};
