import type { Finding } from '../../model/finding.ts';
import type { Mm } from '../../units/mm.ts';
import { BEHIND_SEAT, WALL_ROOM } from './access-lines.ts';
import { atLeastVerdict, type CheckContext, notChecked, say } from './check.ts';
import { type RoomUnder, roomUnder } from './room-under.ts';
import type { SeatMap } from './seat-map.ts';
import type { SeatPlace } from './seat-place.ts';
import { solvedFixes } from './solve-fix.ts';

const CHECK = 'walking room';

/** What is behind the places of one kind: which side of the room they look away from, and what to change. */
interface Behind {
  readonly where: string;
  readonly axis: 0 | 1;
  readonly size: 'length' | 'width';
  readonly levers: readonly string[];
}

const BEHIND: { readonly [K in SeatPlace['kind']]: Behind } = {
  side: { where: 'the long sides', axis: 1, size: 'width', levers: ['top.width'] },
  end: { where: 'the ends', axis: 0, size: 'length', levers: ['top.length'] },
};

/** Room between the edges where people sit and the walls, with the table in the middle of the room. */
export function walkingRoom(context: CheckContext, { room, places }: SeatMap): Finding[] {
  return (['side', 'end'] as const)
    .filter((kind) => places.some((p) => p.kind === kind))
    .map((kind) => {
      const { size } = BEHIND[kind];
      return context.site.room[size] > 0
        ? behind(context, room, BEHIND[kind])
        : notChecked(CHECK, room.top.id, `the ${size} of the room (site.room.${size})`);
    });
}

const free = ({ site }: CheckContext, { box }: RoomUnder, { axis, size }: Behind): Mm =>
  (site.room[size] - (box.max[axis] - box.min[axis])) / 2;

/** A smaller table, or what room this one wants. */
function fixes(context: CheckContext, where: Behind): string[] {
  const { usual } = WALL_ROOM.value;
  const small = solvedFixes(context, {
    measure: (moved) => {
      const room = roomUnder(moved.assembly);
      return room && free(moved, room, where);
    },
    limit: usual,
    want: 'at least',
    levers: where.levers,
    say: (reached) => `${say(context, reached, 'down')} behind ${where.where}`,
  });
  const { box } = roomUnder(context.assembly)!;
  const wanted = box.max[where.axis] - box.min[where.axis] + 2 * usual;
  return [...small, `a room with a ${where.size} of ${say(context, wanted, 'up')}`];
}

function behind(context: CheckContext, room: RoomUnder, where: Behind): Finding {
  const { usual } = WALL_ROOM.value;
  const { still, edge, walk } = BEHIND_SEAT.value;
  const value = free(context, room, where);
  const verdict = atLeastVerdict(value, usual, still);
  const can =
    value >= walk
      ? `enough to walk past somebody seated (${say(context, walk)})`
      : value >= edge
        ? `enough to edge past somebody seated (${say(context, edge)}), not to walk past (${say(context, walk)})`
        : value >= still
          ? `enough to sit (${say(context, still)}), not to edge past (${say(context, edge)})`
          : `a seated person takes ${say(context, still)}`;
  const there = value > 0 ? `${say(context, value, 'down')} to the wall` : 'no room at all';
  return {
    check: CHECK,
    verdict,
    part: room.top.id,
    value,
    limit: usual,
    unit: 'mm',
    because: `behind ${where.where} there is ${there}: ${can}`,
    fixes: verdict === 'ok' ? [] : fixes(context, where),
    source: `${WALL_ROOM.source}; ${BEHIND_SEAT.source}`,
    assumptions: ['the table stands in the middle of the room, along it'],
  };
}
