import {
  EQ_4_14,
  TABLE_4_3,
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

export const whiteOak: Species = {
  id: 'white-oak',
  name: 'white oak',
  scientificName: memory('Quercus alba', 'botanical name'),
  kind: 'hardwood',
  ...row('read', TABLE_4_3, { shrinkageRadial: 5.6, shrinkageTangential: 10.5, shrinkageVolumetric: 16.3 }),
  ...row(
    'read',
    TABLE_13_5,
    { changeRadial: 0.0018, changeTangential: 0.00365 },
    'value of the commercial white oak group, membership from memory; the shrinkage of white oak alone gives 0.00194 and 0.00376',
  ),
  ...row('read', TABLE_5_3B, {
    specificGravityGreen: 0.6,
    specificGravity12: 0.68,
    mor: 104.8,
    morGreen: 57.23,
    moe: 12270,
    moeGreen: 8618,
    compressionParallel: 51.3,
    compressionPerpendicular: 7.377,
    shear: 13.79,
    tensionPerpendicular: 5.516,
    hardness: 6050,
  }),
  ...row('computed', EQ_4_14, { density12: 761.6 }),
  ...row('read', TABLE_5_13, { intersectionMoisture: 25 }),
  ...row('read', TABLE_5_1_QUOTED, { etOverEl: 0.072, erOverEl: 0.163 }),
  ...row('memory', TABLE_5_1, { glrOverEl: 0.086 }),
  ...row('memory', TABLE_5_2, {
    poissonLR: 0.369,
    poissonLT: 0.428,
    poissonRT: 0.618,
    poissonTR: 0.3,
    poissonRL: 0.074,
    poissonTL: 0.036,
  }),
};
