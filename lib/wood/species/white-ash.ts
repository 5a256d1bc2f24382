import { EQ_4_14, TABLE_4_3, TABLE_5_1, TABLE_5_2, TABLE_5_3B, TABLE_5_13, TABLE_13_5 } from '../citations.ts';
import { memory } from '../sourced.ts';
import type { Species } from '../species.ts';
import { row } from '../species-row.ts';

export const whiteAsh: Species = {
  id: 'white-ash',
  name: 'white ash',
  scientificName: memory('Fraxinus americana', 'botanical name'),
  kind: 'hardwood',
  ...row('read', TABLE_4_3, { shrinkageRadial: 4.9, shrinkageTangential: 7.8, shrinkageVolumetric: 13.3 }),
  ...row('read', TABLE_13_5, { changeRadial: 0.00169, changeTangential: 0.00274 }),
  ...row('read', TABLE_5_3B, {
    specificGravityGreen: 0.55,
    specificGravity12: 0.6,
    morGreen: 65.5,
    moe: 12000,
    moeGreen: 9928,
    compressionParallel: 51.09,
    compressionPerpendicular: 7.998,
    shear: 13.17,
    tensionPerpendicular: 6.481,
    hardness: 5872,
  }),
  ...row(
    'read',
    TABLE_5_3B,
    { mor: 106.2 },
    'an earlier edition (FPL-GTR-190, from memory) prints 15,000 psi, 103.4 MPa; this one 15,400 psi',
  ),
  ...row('computed', EQ_4_14, { density12: 672 }),
  ...row('read', TABLE_5_13, { intersectionMoisture: 24 }),
  ...row('memory', TABLE_5_1, { etOverEl: 0.08, erOverEl: 0.125, glrOverEl: 0.109, gltOverEl: 0.077 }),
  ...row('memory', TABLE_5_2, {
    poissonLR: 0.371,
    poissonLT: 0.44,
    poissonRT: 0.684,
    poissonTR: 0.36,
    poissonRL: 0.059,
    poissonTL: 0.051,
  }),
};
