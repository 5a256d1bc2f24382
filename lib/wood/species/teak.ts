import { TABLE_4_4, TABLE_5_5B, TABLE_5_13, TABLE_13_5, TABLE_13_5_CHART } from '../citations.ts';
import { read } from '../sourced.ts';
import type { Species } from '../species.ts';
import { row } from '../species-row.ts';

export const teak: Species = {
  id: 'teak',
  name: 'teak',
  scientificName: read('Tectona grandis', TABLE_5_5B),
  kind: 'hardwood',
  ...row('memory', TABLE_4_4, { shrinkageRadial: 2.5, shrinkageTangential: 5.8, shrinkageVolumetric: 7 }),
  ...row('memory', TABLE_13_5, { changeRadial: 0.00101 }, 'does not fit the shrinkage figures, which give 0.00085'),
  ...row(
    'read',
    TABLE_13_5_CHART,
    { changeTangential: 0.00186 },
    'another chart prints 0.00185; the shrinkage figures give 0.00201',
  ),
  ...row('read', TABLE_5_5B, {
    specificGravityGreen: 0.55,
    mor: 100.7,
    morGreen: 79.98,
    moe: 10690,
    moeGreen: 9446,
    compressionParallel: 57.98,
    shear: 13.03,
    hardness: 4448,
  }),
  ...row('read', TABLE_5_13, { intersectionMoisture: 25 }),
};
