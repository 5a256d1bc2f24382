import type { Vec2 } from '../../geometry/vec.ts';
import type { Assembly } from '../../model/assembly.ts';
import type { Site } from '../../shop/site.ts';
import { type SeatMap, seatMap } from '../checks/seat-map.ts';
import type { EdgeName } from '../checks/table-edge.ts';
import type { SceneSeat } from './scene-data.ts';

const FACING: { readonly [E in EdgeName]: Vec2 } = {
  'left side': [0, -1],
  'right side': [0, 1],
  'reference end': [1, 0],
  'far end': [-1, 0],
};

/** The places as the check on seats and the approval sheet have them. */
export function sceneSeats(assembly: Assembly, site: Site): SceneSeat[] {
  const map: SeatMap | undefined = seatMap({ assembly, site });
  if (!map) return [];
  const { seatHeight, knee } = site.seating;
  return map.places.map(({ edge, middle, width }) => ({
    at: middle,
    facing: FACING[edge],
    width,
    depth: knee,
    seatHeight,
    tableHeight: map.room.box.max[2],
  }));
}
