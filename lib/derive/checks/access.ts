import { blockedSides } from './access-blocked.ts';
import { kneeRoom } from './access-knees.ts';
import { seats } from './access-seats.ts';
import { walkingRoom } from './access-walking.ts';
import { wheelchairPlace } from './access-wheelchair.ts';
import type { Check } from './check.ts';
import { seatMap } from './seat-map.ts';

/** Who can sit at the table, with knees under it and room behind. */
export const access: Check = {
  name: 'access',
  run(context) {
    const map = seatMap(context);
    if (map) {
      return [
        seats(context, map),
        ...blockedSides(context, map),
        ...kneeRoom(context, map),
        wheelchairPlace(context, map),
        ...walkingRoom(context, map),
      ];
    }
    return [
      {
        check: 'seats',
        verdict: 'ok',
        part: context.assembly.parts[0]!.id,
        unit: 'places',
        because: 'it has no table top to sit at',
        fixes: [],
        source: 'our convention',
      },
    ];
  },
};
