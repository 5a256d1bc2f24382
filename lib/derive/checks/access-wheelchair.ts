import { partOf } from '../../model/assembly.ts';
import type { Finding } from '../../model/finding.ts';
import type { Mm } from '../../units/mm.ts';
import { KNEE_LINE, WHEELCHAIR_BOX, WHEELCHAIR_TOP } from './access-lines.ts';
import { type CheckContext, called, say } from './check.ts';
import { type SeatMap, seatMap } from './seat-map.ts';
import { solvedFixes } from './solve-fix.ts';
import { type WheelchairRoom, wheelchairRoom } from './wheelchair-room.ts';

/** What a maker would change to make room for a wheelchair. */
const LEVERS = [
  'table.height',
  'top.thickness',
  'post.spacing',
  'frame.inset',
  'top.length',
  'top.width',
  'bearer.length',
] as const;

const { height, width, depth } = WHEELCHAIR_BOX.value;

/**
 * Room for a wheelchair at the sides and ends, held against published lines. Information: what is asked of a table is for
 * local codes to say, so the worst verdict is "look again", and that only when such a place is wanted.
 */
export function wheelchairPlace(context: CheckContext, map: SeatMap): Finding {
  const rooms = roomsOf(map);
  const here = rooms.find((r) => r.box && r.line);
  const shown = here ?? rooms[0]!;
  const { wheelchair } = context.site.seating;
  const top = map.room.box.max[2];
  const goodTop = top >= WHEELCHAIR_TOP.value.least && top <= WHEELCHAIR_TOP.value.most;
  const good = here !== undefined && goodTop;
  const sentences = [
    `${wheelchair ? '' : 'not asked for, for information: '}${here ? fits(context, here) : misses(context, rooms)}`,
    ...(here ? rooms.filter((r) => r.edge.kind !== here.edge.kind).slice(0, 1) : []).map((r) => other(context, r)),
    `the top is at ${say(context, top)}, and published lines say ${range(context)}`,
    'local codes decide',
  ];
  return {
    check: 'wheelchair place',
    verdict: good || !wheelchair ? 'ok' : 'look again',
    part: map.room.top.id,
    value: shown.kneeHeight,
    limit: height,
    unit: 'mm',
    because: sentences.join('; '),
    fixes: good || !wheelchair ? [] : fixes(context),
    source: `${WHEELCHAIR_BOX.source}; ${KNEE_LINE.source}`,
  };
}

/** A side, then an end: the two sides and the two ends of a table are alike or the better one counts. */
function roomsOf({ edges, room }: SeatMap): WheelchairRoom[] {
  const all = edges.map(({ edge, pieces }) => wheelchairRoom(edge, pieces, room));
  const better = (a: WheelchairRoom, b: WheelchairRoom): WheelchairRoom => (score(b) > score(a) ? b : a);
  return [better(all[0]!, all[1]!), better(all[2]!, all[3]!)];
}

const score = ({ box, line }: WheelchairRoom): number => (box ? 1 : 0) + (line ? 1 : 0);

const place = ({ edge }: WheelchairRoom): string => (edge.kind === 'side' ? 'a long side' : 'an end');

const fits = (context: CheckContext, r: WheelchairRoom): string =>
  `a wheelchair has room at ${place(r)}: ${say(context, r.kneeHeight, 'down')} under the top ${say(context, depth)} from the edge, ${say(context, r.clear, 'down')} wide, nothing before ${say(context, r.depth, 'down')}; published lines ask for ${say(context, height)} high, ${say(context, width)} wide and ${say(context, depth)} deep`;

const misses = (context: CheckContext, rooms: readonly WheelchairRoom[]): string =>
  `published lines ask for ${say(context, height)} high, ${say(context, width)} wide and ${say(context, depth)} deep, and no edge has that: ${rooms.map((r) => `${place(r)} has ${has(context, r)}`).join('; ')}`;

const other = (context: CheckContext, r: WheelchairRoom): string =>
  r.box && r.line ? `so it has at ${place(r)}` : `${place(r)} has ${has(context, r)}`;

function has(context: CheckContext, r: WheelchairRoom): string {
  const what =
    r.meets && r.depth < depth
      ? `${say(context, r.depth, 'down')} before ${called(partOf(context.assembly, r.meets))}`
      : `${say(context, r.kneeHeight, 'down')} under the top and ${say(context, r.clear, 'down')} of width`;
  return r.line ? `${what}, enough for the knee line of 2010 alone` : what;
}

const range = (context: CheckContext): string =>
  `${say(context, WHEELCHAIR_TOP.value.least)} to ${say(context, WHEELCHAIR_TOP.value.most)}`;

const fixes = (context: CheckContext): string[] =>
  solvedFixes(context, {
    measure: (moved) => {
      const map = seatMap(moved);
      return map && Math.max(...roomsOf(map).map((r) => margin(r, map.room.box.max[2])));
    },
    limit: 0,
    want: 'at least',
    levers: LEVERS,
    say: () => 'room for a wheelchair',
  });

/** mm to spare against the tightest line; negative by what is missing. */
function margin(r: WheelchairRoom, top: Mm): Mm {
  const { least, most } = WHEELCHAIR_TOP.value;
  const spare = Math.min(r.kneeHeight - height, Math.max(r.clear - width, r.depth - depth), top - least, most - top);
  return r.box && r.line ? spare : Math.min(spare, -1);
}
