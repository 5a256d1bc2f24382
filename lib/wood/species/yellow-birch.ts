import { EQ_4_14, TABLE_4_3, TABLE_5_1, TABLE_5_2, TABLE_5_3B, TABLE_5_13, TABLE_13_5 } from '../citations.ts';
import { memory } from '../sourced.ts';
import type { Species } from '../species.ts';
import { row } from '../species-row.ts';

export const yellowBirch: Species = {
  id: 'yellow-birch',
  name: 'yellow birch',
  scientificName: memory('Betula alleghaniensis', 'botanical name'),
  kind: 'hardwood',
  ...row('read', TABLE_4_3, { shrinkageRadial: 7.3, shrinkageTangential: 9.5, shrinkageVolumetric: 16.8 }),
  ...row('read', TABLE_13_5, { changeRadial: 0.00256, changeTangential: 0.00338 }),
  ...row('read', TABLE_5_3B, {
    specificGravityGreen: 0.55,
    specificGravity12: 0.62,
    mor: 114.5,
    morGreen: 57.23,
    moe: 13860,
    moeGreen: 10340,
    compressionParallel: 56.33,
    compressionPerpendicular: 6.688,
    shear: 12.96,
    tensionPerpendicular: 6.343,
    hardness: 5605,
  }),
  ...row('computed', EQ_4_14, { density12: 694.4 }),
  ...row('read', TABLE_5_13, { intersectionMoisture: 27 }),
  ...row('memory', TABLE_5_1, {
    etOverEl: 0.05,
    erOverEl: 0.078,
    glrOverEl: 0.074,
    gltOverEl: 0.068,
    grtOverEl: 0.017,
  }),
  ...row('memory', TABLE_5_2, {
    poissonLR: 0.426,
    poissonLT: 0.451,
    poissonRT: 0.697,
    poissonTR: 0.426,
    poissonRL: 0.043,
    poissonTL: 0.024,
  }),
};
