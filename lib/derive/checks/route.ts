import type { Finding } from '../../model/finding.ts';
import type { Check } from './check.ts';
import { packedLoads } from './packed-loads.ts';
import { underCeiling } from './route-ceiling.ts';
import { aroundCorner } from './route-corner.ts';
import { throughDoor } from './route-door.ts';

/** Whether the piece, knocked down and packed, comes around the corner, through the door and under the ceiling. */
export const route: Check = {
  name: 'way in',
  run(context): Finding[] {
    const loads = packedLoads(context.assembly, context.site.route.packing);
    return [...aroundCorner(context, loads), ...throughDoor(context, loads), ...underCeiling(context, loads)];
  },
};
