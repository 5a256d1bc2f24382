import { EQ_4_14, TABLE_4_3, TABLE_5_3B, TABLE_5_13, TABLE_13_5, TABLE_13_5_CHART } from '../citations.ts';
import { memory } from '../sourced.ts';
import type { Species } from '../species.ts';
import { row } from '../species-row.ts';

const GROUP = 'value of the true hickory group; that shagbark belongs to it is from memory';

export const hickory: Species = {
  id: 'hickory',
  name: 'shagbark hickory',
  scientificName: memory('Carya ovata', 'botanical name'),
  kind: 'hardwood',
  ...row('memory', TABLE_4_3, { shrinkageRadial: 7, shrinkageTangential: 10.5, shrinkageVolumetric: 16.7 }),
  ...row('memory', TABLE_13_5, { changeRadial: 0.00259 }, GROUP),
  ...row('read', TABLE_13_5_CHART, { changeTangential: 0.00411 }, GROUP),
  ...row('read', TABLE_5_3B, {
    specificGravityGreen: 0.64,
    specificGravity12: 0.72,
    mor: 139.3,
    morGreen: 75.84,
    moe: 14890,
    moeGreen: 10820,
    compressionParallel: 63.5,
    compressionPerpendicular: 12.13,
    shear: 16.75,
    hardness: 8363,
  }),
  ...row('computed', EQ_4_14, { density12: 806.4 }),
  ...row('read', TABLE_5_13, { intersectionMoisture: 25 }),
};
