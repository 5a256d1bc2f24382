import { EQ_4_14, TABLE_4_3, TABLE_5_1, TABLE_5_2, TABLE_5_3B, TABLE_5_13, TABLE_13_5 } from '../citations.ts';
import { memory } from '../sourced.ts';
import type { Species } from '../species.ts';
import { row } from '../species-row.ts';

export const yellowPoplar: Species = {
  id: 'yellow-poplar',
  name: 'yellow-poplar',
  scientificName: memory('Liriodendron tulipifera', 'botanical name'),
  kind: 'hardwood',
  ...row('read', TABLE_4_3, { shrinkageRadial: 4.6, shrinkageTangential: 8.2, shrinkageVolumetric: 12.7 }),
  ...row(
    'memory',
    TABLE_13_5,
    { changeRadial: 0.00158, changeTangential: 0.00289 },
    'equals what the shrinkage figures give',
  ),
  ...row('read', TABLE_5_3B, {
    specificGravityGreen: 0.4,
    specificGravity12: 0.42,
    mor: 69.64,
    morGreen: 41.37,
    moe: 10890,
    moeGreen: 8412,
    compressionParallel: 38.2,
    compressionPerpendicular: 3.447,
    shear: 8.205,
    tensionPerpendicular: 3.723,
    hardness: 2402,
  }),
  ...row('computed', EQ_4_14, { density12: 470.4 }),
  ...row('read', TABLE_5_13, { intersectionMoisture: 25 }),
  ...row('memory', TABLE_5_1, {
    etOverEl: 0.043,
    erOverEl: 0.092,
    glrOverEl: 0.075,
    gltOverEl: 0.069,
    grtOverEl: 0.011,
  }),
  ...row('memory', TABLE_5_2, {
    poissonLR: 0.318,
    poissonLT: 0.392,
    poissonRT: 0.703,
    poissonTR: 0.329,
    poissonRL: 0.03,
    poissonTL: 0.019,
  }),
};
