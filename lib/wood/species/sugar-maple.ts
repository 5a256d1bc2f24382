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

export const sugarMaple: Species = {
  id: 'sugar-maple',
  name: 'sugar maple',
  scientificName: memory('Acer saccharum', 'botanical name'),
  kind: 'hardwood',
  ...row('read', TABLE_4_3_NEW, { shrinkageRadial: 4.8, shrinkageTangential: 9.9, shrinkageVolumetric: 14.7 }),
  ...row('read', TABLE_13_5, { changeRadial: 0.00165, changeTangential: 0.00353 }),
  ...row('read', TABLE_5_3B, {
    specificGravityGreen: 0.56,
    specificGravity12: 0.63,
    mor: 108.9,
    morGreen: 64.81,
    moe: 12620,
    moeGreen: 10690,
    compressionParallel: 53.99,
    compressionPerpendicular: 10.14,
    shear: 16.06,
    hardness: 6450,
  }),
  ...row('computed', EQ_4_14, { density12: 705.6 }),
  ...row('read', TABLE_5_13, { intersectionMoisture: 25 }),
  ...row('read', TABLE_5_1_QUOTED, { etOverEl: 0.065, erOverEl: 0.132 }),
  ...row('memory', TABLE_5_1, { glrOverEl: 0.111, gltOverEl: 0.063 }),
  ...row('memory', TABLE_5_2, {
    poissonLR: 0.424,
    poissonLT: 0.476,
    poissonRT: 0.774,
    poissonTR: 0.349,
    poissonRL: 0.065,
    poissonTL: 0.037,
  }),
};
