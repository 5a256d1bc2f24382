import type { Finding } from '../../model/finding.ts';
import type { Mm } from '../../units/mm.ts';
import { SEATING } from './access-lines.ts';
import { type CheckContext, say } from './check.ts';
import { type SeatEdge, type SeatMap, seatMap } from './seat-map.ts';
import { missingLength } from './seat-missing.ts';
import { placesIn, type SeatStretch } from './seat-stretch.ts';
import { inTheWay } from './seat-way.ts';
import { solvedFixes } from './solve-fix.ts';

/** What a maker would change to seat more people. */
const LEVERS = ['top.length', 'frame.inset', 'top.width', 'post.spacing', 'bearer.length'] as const;

/** How many people can sit at the table: places between the frames and outside them, never the perimeter. */
export function seats(context: CheckContext, map: SeatMap): Finding {
  const wanted = context.site.seating.places;
  const value = map.places.length;
  const found = { check: 'seats', part: map.room.top.id, value, unit: 'places', source: SEATING };
  const layout = [...layoutText(context, map), ...oneMore(context, map), ...notEnds(context, map)].join('; ');
  if (wanted === 0) {
    const seats = value > 0 ? `the table seats ${value}: ${layout}` : `nobody can sit at it: ${why(context, map)}`;
    return { ...found, verdict: value > 0 ? 'ok' : 'look again', because: seats, fixes: more(context, map, 1) };
  }
  const fit = `${wanted === 1 ? '1 place is' : `${wanted} places are`} wanted and ${value === 1 ? '1 fits' : `${value} fit`}`;
  return {
    ...found,
    verdict: value >= wanted ? 'ok' : 'change it',
    limit: wanted,
    because: `${fit}: ${value > 0 ? layout : why(context, map)}`,
    fixes: more(context, map, wanted),
  };
}

const more = (context: CheckContext, { places }: SeatMap, wanted: number): string[] =>
  places.length >= wanted
    ? []
    : solvedFixes(context, {
        measure: (moved) => {
          const map = seatMap(moved);
          return map && missingLength(map, wanted, moved.site.seating.least);
        },
        limit: 0,
        want: 'at most',
        levers: LEVERS,
        say: () => (wanted === 1 ? '1 place' : `${wanted} places`),
      });

/** "2 on each long side at 26 5/8 in each", "1 at each end at 40 in". */
function layoutText(context: CheckContext, { edges: [left, right, a, b], oneSided }: SeatMap): string[] {
  const side = (e: SeatEdge, where: string): string[] =>
    e.places.length > 0
      ? [`${e.places.length} ${where} at ${say(context, narrowest(e), 'down')}${e.places.length > 1 ? ' each' : ''}`]
      : [];
  const alike = (p: SeatEdge, q: SeatEdge): boolean =>
    p.places.length === q.places.length && Math.abs(narrowest(p) - narrowest(q)) < SAME;
  const sides = oneSided
    ? side(left, 'on one long side, too narrow for knees from both,')
    : alike(left, right)
      ? side(left, 'on each long side')
      : [...side(left, 'on the left side'), ...side(right, 'on the right side')];
  const ends = alike(a, b)
    ? side(a, 'at each end')
    : [...side(a, 'at the reference end'), ...side(b, 'at the far end')];
  return [...sides, ...ends];
}

const SAME: Mm = 1e-6;

const narrowest = ({ places }: SeatEdge): Mm => Math.min(Infinity, ...places.map((p) => p.width));

/** What one more on a side would get. */
function oneMore(context: CheckContext, { edges: [left, right] }: SeatMap): string[] {
  const stretches = [left, right].flatMap((e) => e.stretches);
  const longest = stretches.reduce<SeatStretch | undefined>((a, b) => (a && a.clear >= b.clear ? a : b), undefined);
  if (!longest || longest.count === 0) return [];
  const next = longest.count + 1;
  const least = say(context, context.site.seating.least, 'up');
  const where = longest.outside || placesIn(left.stretches) > longest.count ? 'there' : 'on a long side';
  return [`${next} ${where} would get ${say(context, longest.clear / next, 'down')} each, and ${least} is the least`];
}

/** Why there is no place at the ends, where one was asked for. */
function notEnds(context: CheckContext, { edges: [, , a, b] }: SeatMap): string[] {
  const { ends } = context.site.seating;
  if (!ends || a.places.length + b.places.length > 0) return [];
  return [`none at the ends: ${inTheWay(context, a)}`];
}

const why = (context: CheckContext, { edges: [left, , a] }: SeatMap): string =>
  [
    `on a long side ${inTheWay(context, left)}`,
    ...(context.site.seating.ends ? [`at an end ${inTheWay(context, a)}`] : []),
  ].join('; ');
