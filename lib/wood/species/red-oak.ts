import {
  EQ_4_14,
  TABLE_4_3_NEW,
  TABLE_5_1,
  TABLE_5_1_QUOTED,
  TABLE_5_2,
  TABLE_5_3B,
  TABLE_5_13,
  TABLE_13_5,
} from '../citations.ts';
import { memory } from '../sourced.ts';
import type { Species } from '../species.ts';
import { row } from '../species-row.ts';

export const redOak: Species = {
  id: 'red-oak',
  name: 'northern red oak',
  scientificName: memory('Quercus rubra', 'botanical name'),
  kind: 'hardwood',
  ...row('read', TABLE_4_3_NEW, { shrinkageRadial: 4, shrinkageTangential: 8.6, shrinkageVolumetric: 13.7 }),
  ...row(
    'read',
    TABLE_13_5,
    { changeRadial: 0.00158, changeTangential: 0.00369 },
    'value of the commercial red oak group, membership from memory; the shrinkage of northern red oak alone gives 0.00137 and 0.00304',
  ),
  ...row('read', TABLE_5_3B, {
    specificGravityGreen: 0.56,
    specificGravity12: 0.63,
    mor: 98.6,
    morGreen: 57.23,
    moe: 12550,
    moeGreen: 9308,
    compressionParallel: 46.61,
    compressionPerpendicular: 6.964,
    shear: 12.27,
    tensionPerpendicular: 5.516,
    hardness: 5738,
  }),
  ...row('computed', EQ_4_14, { density12: 705.6 }),
  ...row('read', TABLE_5_13, { intersectionMoisture: 25 }),
  ...row('read', TABLE_5_1_QUOTED, { etOverEl: 0.082, erOverEl: 0.154 }),
  ...row('memory', TABLE_5_1, { glrOverEl: 0.089, gltOverEl: 0.081 }),
  ...row('memory', TABLE_5_2, {
    poissonLR: 0.35,
    poissonLT: 0.448,
    poissonRT: 0.56,
    poissonTR: 0.292,
    poissonRL: 0.064,
    poissonTL: 0.033,
  }),
};
