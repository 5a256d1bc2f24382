import { TABLE_4_4, TABLE_5_1, TABLE_5_2, TABLE_5_5B, TABLE_5_13 } from '../citations.ts';
import { memory } from '../sourced.ts';
import type { Species } from '../species.ts';
import { row } from '../species-row.ts';

/**
 * Without change coefficients: the pair remembered for table 13-5, 0.00172 and 0.00238, is 1.7 times what the shrinkage
 * gives, so it is left out and movement follows Eq 13-3. The elastic ratios are those of the row Honduras mahogany.
 */
export const mahogany: Species = {
  id: 'mahogany',
  name: 'true mahogany',
  scientificName: memory('Swietenia macrophylla', 'botanical name'),
  kind: 'hardwood',
  ...row(
    'memory',
    TABLE_4_4,
    { shrinkageRadial: 3, shrinkageTangential: 4.1, shrinkageVolumetric: 7.8 },
    'the three figures are printed together; that they are those of true mahogany is from memory',
  ),
  ...row('read', TABLE_5_5B, {
    specificGravityGreen: 0.45,
    mor: 79.29,
    morGreen: 62.05,
    moe: 10340,
    moeGreen: 9239,
    compressionParallel: 46.75,
    shear: 8.481,
    hardness: 3559,
  }),
  ...row('read', TABLE_5_13, { intersectionMoisture: 25 }),
  ...row('memory', TABLE_5_1, {
    etOverEl: 0.064,
    erOverEl: 0.107,
    glrOverEl: 0.066,
    gltOverEl: 0.086,
    grtOverEl: 0.028,
  }),
  ...row('memory', TABLE_5_2, {
    poissonLR: 0.314,
    poissonLT: 0.533,
    poissonRT: 0.6,
    poissonTR: 0.326,
    poissonRL: 0.033,
    poissonTL: 0.034,
  }),
};
