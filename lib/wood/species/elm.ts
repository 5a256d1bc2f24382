import { EQ_4_14, TABLE_4_3, TABLE_5_3B, TABLE_5_13, TABLE_13_5 } from '../citations.ts';
import { memory } from '../sourced.ts';
import type { Species } from '../species.ts';
import { row } from '../species-row.ts';

export const elm: Species = {
  id: 'elm',
  name: 'American elm',
  scientificName: memory('Ulmus americana', 'botanical name'),
  kind: 'hardwood',
  ...row('read', TABLE_4_3, { shrinkageRadial: 4.2, shrinkageTangential: 9.5, shrinkageVolumetric: 14.6 }),
  ...row('read', TABLE_13_5, { changeRadial: 0.00144, changeTangential: 0.00338 }),
  ...row('read', TABLE_5_3B, {
    specificGravityGreen: 0.46,
    specificGravity12: 0.5,
    mor: 81.36,
    morGreen: 49.64,
    moe: 9239,
    moeGreen: 7653,
    compressionParallel: 38.06,
    compressionPerpendicular: 4.757,
    shear: 10.41,
    tensionPerpendicular: 4.551,
    hardness: 3692,
  }),
  ...row('computed', EQ_4_14, { density12: 560 }),
  ...row('read', TABLE_5_13, { intersectionMoisture: 25 }),
};
