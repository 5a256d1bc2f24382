import { EQ_4_14, TABLE_4_3, TABLE_5_1, TABLE_5_2, TABLE_5_3B, TABLE_5_13, TABLE_13_5 } from '../citations.ts';
import { memory } from '../sourced.ts';
import type { Species } from '../species.ts';
import { row } from '../species-row.ts';

export const redMaple: Species = {
  id: 'red-maple',
  name: 'red maple',
  scientificName: memory('Acer rubrum', 'botanical name'),
  kind: 'hardwood',
  ...row(
    'memory',
    TABLE_4_3,
    { shrinkageRadial: 4, shrinkageTangential: 8.2, shrinkageVolumetric: 12.6 },
    'radial and tangential reproduce the printed change coefficients',
  ),
  ...row('read', TABLE_13_5, { changeRadial: 0.00137, changeTangential: 0.00289 }),
  ...row('read', TABLE_5_3B, {
    specificGravityGreen: 0.49,
    specificGravity12: 0.54,
    mor: 92.39,
    morGreen: 53.09,
    moe: 11310,
    moeGreen: 9584,
    compressionParallel: 45.09,
    compressionPerpendicular: 6.895,
    shear: 12.76,
    hardness: 4226,
  }),
  ...row('computed', EQ_4_14, { density12: 604.8 }),
  ...row('read', TABLE_5_13, { intersectionMoisture: 25 }),
  ...row('memory', TABLE_5_1, { etOverEl: 0.067, erOverEl: 0.14, glrOverEl: 0.133, gltOverEl: 0.074 }),
  ...row('memory', TABLE_5_2, {
    // biome-ignore lint/suspicious/noApproximativeNumericConstant: a measured ratio, near log10(e) by chance
    poissonLR: 0.434,
    poissonLT: 0.509,
    poissonRT: 0.762,
    poissonTR: 0.354,
    poissonRL: 0.063,
    poissonTL: 0.044,
  }),
};
