import {
  EQ_4_14,
  TABLE_4_3,
  TABLE_5_1_QUOTED,
  TABLE_5_2,
  TABLE_5_3B,
  TABLE_5_13,
  TABLE_13_5,
  TABLE_13_5_CHART,
} from '../citations.ts';
import { memory } from '../sourced.ts';
import type { Species } from '../species.ts';
import { row } from '../species-row.ts';

export const douglasFir: Species = {
  id: 'douglas-fir',
  name: 'coast Douglas-fir',
  scientificName: memory('Pseudotsuga menziesii', 'botanical name'),
  kind: 'softwood',
  ...row('read', TABLE_4_3, { shrinkageRadial: 4.8, shrinkageTangential: 7.6, shrinkageVolumetric: 12.4 }),
  ...row('memory', TABLE_13_5, { changeRadial: 0.00165 }, 'equals what the shrinkage figures give'),
  ...row('read', TABLE_13_5_CHART, { changeTangential: 0.00267 }),
  ...row('read', TABLE_5_3B, {
    specificGravityGreen: 0.45,
    specificGravity12: 0.48,
    mor: 85.49,
    morGreen: 53.09,
    moe: 13440,
    moeGreen: 10760,
    compressionParallel: 49.85,
    compressionPerpendicular: 5.516,
    shear: 7.791,
    tensionPerpendicular: 2.344,
    hardness: 3158,
  }),
  ...row('computed', EQ_4_14, { density12: 537.6 }),
  ...row('read', TABLE_5_13, { intersectionMoisture: 24 }),
  ...row('read', TABLE_5_1_QUOTED, {
    etOverEl: 0.05,
    erOverEl: 0.068,
    glrOverEl: 0.064,
    gltOverEl: 0.078,
    grtOverEl: 0.007,
  }),
  ...row('memory', TABLE_5_2, {
    poissonLR: 0.292,
    poissonLT: 0.449,
    poissonRT: 0.39,
    poissonTR: 0.374,
    poissonRL: 0.036,
    poissonTL: 0.029,
  }),
};
