import { EQ_4_14, TABLE_4_3, TABLE_5_3B, TABLE_5_13, TABLE_13_5 } from '../citations.ts';
import { memory } from '../sourced.ts';
import type { Species } from '../species.ts';
import { row } from '../species-row.ts';

export const beech: Species = {
  id: 'beech',
  name: 'American beech',
  scientificName: memory('Fagus grandifolia', 'botanical name'),
  kind: 'hardwood',
  ...row('read', TABLE_4_3, { shrinkageRadial: 5.5, shrinkageTangential: 11.9, shrinkageVolumetric: 17.2 }),
  ...row('read', TABLE_13_5, { changeRadial: 0.0019, changeTangential: 0.00431 }),
  ...row('read', TABLE_5_3B, {
    specificGravityGreen: 0.56,
    specificGravity12: 0.64,
    mor: 102.7,
    morGreen: 59.29,
    moe: 11860,
    moeGreen: 9515,
    compressionParallel: 50.33,
    compressionPerpendicular: 6.964,
    shear: 13.86,
    tensionPerpendicular: 6.964,
    hardness: 5783,
  }),
  ...row('computed', EQ_4_14, { density12: 716.8 }),
  ...row('read', TABLE_5_13, { intersectionMoisture: 25 }),
};
