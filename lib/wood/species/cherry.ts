import { EQ_4_14, TABLE_4_3, TABLE_5_1, TABLE_5_2, TABLE_5_3B, TABLE_5_13, TABLE_13_5 } from '../citations.ts';
import { memory } from '../sourced.ts';
import type { Species } from '../species.ts';
import { row } from '../species-row.ts';

export const cherry: Species = {
  id: 'cherry',
  name: 'black cherry',
  scientificName: memory('Prunus serotina', 'botanical name'),
  kind: 'hardwood',
  ...row('read', TABLE_4_3, { shrinkageRadial: 3.7, shrinkageTangential: 7.1, shrinkageVolumetric: 11.5 }),
  ...row('read', TABLE_13_5, { changeRadial: 0.00126, changeTangential: 0.00248 }),
  ...row('read', TABLE_5_3B, {
    specificGravityGreen: 0.47,
    specificGravity12: 0.5,
    mor: 84.81,
    morGreen: 55.16,
    moe: 10270,
    moeGreen: 9032,
    compressionParallel: 49.02,
    compressionPerpendicular: 4.757,
    shear: 11.72,
    tensionPerpendicular: 3.861,
    hardness: 4226,
  }),
  ...row('computed', EQ_4_14, { density12: 560 }),
  ...row('read', TABLE_5_13, { intersectionMoisture: 25 }),
  ...row('memory', TABLE_5_1, { etOverEl: 0.086, erOverEl: 0.197, glrOverEl: 0.147, gltOverEl: 0.097 }),
  ...row('memory', TABLE_5_2, {
    poissonLR: 0.392,
    poissonLT: 0.428,
    poissonRT: 0.695,
    poissonTR: 0.282,
    poissonRL: 0.086,
    poissonTL: 0.048,
  }),
};
