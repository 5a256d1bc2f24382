import { EQ_4_14, TABLE_4_3, TABLE_5_1, TABLE_5_2, TABLE_5_3B, TABLE_5_13, TABLE_13_5 } from '../citations.ts';
import { memory } from '../sourced.ts';
import type { Species } from '../species.ts';
import { row } from '../species-row.ts';

export const walnut: Species = {
  id: 'walnut',
  name: 'black walnut',
  scientificName: memory('Juglans nigra', 'botanical name'),
  kind: 'hardwood',
  ...row('read', TABLE_4_3, { shrinkageRadial: 5.5, shrinkageTangential: 7.8, shrinkageVolumetric: 12.8 }),
  ...row('read', TABLE_13_5, { changeRadial: 0.0019, changeTangential: 0.00274 }),
  ...row('read', TABLE_5_3B, {
    specificGravityGreen: 0.51,
    specificGravity12: 0.55,
    mor: 100.7,
    morGreen: 65.5,
    moe: 11580,
    moeGreen: 9791,
    compressionParallel: 52.26,
    compressionPerpendicular: 6.964,
    shear: 9.446,
    tensionPerpendicular: 4.757,
    hardness: 4493,
  }),
  ...row('computed', EQ_4_14, { density12: 616 }),
  ...row('read', TABLE_5_13, { intersectionMoisture: 25 }),
  ...row('memory', TABLE_5_1, {
    etOverEl: 0.056,
    erOverEl: 0.106,
    glrOverEl: 0.085,
    gltOverEl: 0.062,
    grtOverEl: 0.021,
  }),
  ...row('memory', TABLE_5_2, {
    poissonLR: 0.495,
    poissonLT: 0.632,
    poissonRT: 0.718,
    poissonTR: 0.378,
    poissonRL: 0.052,
    poissonTL: 0.035,
  }),
};
