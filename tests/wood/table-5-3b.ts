import type { SpeciesId } from '../../lib/wood/species-id.ts';

/** One line of the inch-pound tables at 12 % moisture; `null` where a cell is empty. */
export interface InchPound {
  readonly mor: number;
  /** Million psi. */
  readonly moe: number;
  readonly compressionParallel: number;
  readonly compressionPerpendicular: number | null;
  readonly shear: number;
  readonly tensionPerpendicular: number | null;
  /** lbf. */
  readonly hardness: number;
}

const line = (
  mor: number,
  moe: number,
  compressionParallel: number,
  compressionPerpendicular: number | null,
  shear: number,
  tensionPerpendicular: number | null,
  hardness: number,
): InchPound => ({
  mor,
  moe,
  compressionParallel,
  compressionPerpendicular,
  shear,
  tensionPerpendicular,
  hardness,
});

/** FPL-GTR-282 tables 5-3b and 5-5b (mahogany, teak), psi unless noted. */
export const TABLE_5_3B_PRINTED: { readonly [Id in SpeciesId]: InchPound } = {
  beech: line(14900, 1.72, 7300, 1010, 2010, 1010, 1300),
  cherry: line(12300, 1.49, 7110, 690, 1700, 560, 950),
  'douglas-fir': line(12400, 1.95, 7230, 800, 1130, 340, 710),
  elm: line(11800, 1.34, 5520, 690, 1510, 660, 830),
  hickory: line(20200, 2.16, 9210, 1760, 2430, null, 1880),
  mahogany: line(11500, 1.5, 6780, null, 1230, null, 800),
  'red-maple': line(13400, 1.64, 6540, 1000, 1850, null, 950),
  'red-oak': line(14300, 1.82, 6760, 1010, 1780, 800, 1290),
  'sugar-maple': line(15800, 1.83, 7830, 1470, 2330, null, 1450),
  teak: line(14600, 1.55, 8410, null, 1890, null, 1000),
  walnut: line(14600, 1.68, 7580, 1010, 1370, 690, 1010),
  'white-ash': line(15400, 1.74, 7410, 1160, 1910, 940, 1320),
  'white-oak': line(15200, 1.78, 7440, 1070, 2000, 800, 1360),
  'yellow-birch': line(16600, 2.01, 8170, 970, 1880, 920, 1260),
  'yellow-poplar': line(10100, 1.58, 5540, 500, 1190, 540, 540),
};
