import { partOf } from '../../model/assembly.ts';
import type { Finding } from '../../model/finding.ts';
import type { Mm } from '../../units/mm.ts';
import { SEATING } from './access-lines.ts';
import { type CheckContext, called, say } from './check.ts';
import { type SeatMap, seatMap } from './seat-map.ts';
import type { SeatPlace } from './seat-place.ts';
import { solvedFixes } from './solve-fix.ts';

/** What a maker would change to give knees more room. */
const KNEE_LEVERS = ['table.height', 'top.thickness', 'bearer.depth', 'upperRail.depth', 'cleat.depth'] as const;

/** What moves a low piece away from feet. */
const FEET_LEVERS = ['post.spacing', 'stretcher.spacing', 'top.width', 'foot.length'] as const;

type Kind = SeatPlace['kind'];

/**
 * Knee height of every place: from the floor to the tapered underside where knees come to, or to a piece that hangs lower;
 * thigh room is what stays of it over the seat. And low pieces that feet would meet.
 */
export function kneeRoom(context: CheckContext, { places }: SeatMap): Finding[] {
  const kinds = (['side', 'end'] as const).filter((kind) => places.some((p) => p.kind === kind));
  return kinds.flatMap((kind) => {
    const there = places.filter((p) => p.kind === kind);
    return [knees(context, kind, there), ...feet(context, kind, there)];
  });
}

const WHERE: { readonly [K in Kind]: string } = { side: 'on the long sides', end: 'at the ends' };

const lowest = (places: readonly SeatPlace[]): SeatPlace | undefined =>
  places.reduce<SeatPlace | undefined>((a, b) => (a && a.kneeHeight <= b.kneeHeight ? a : b), undefined);

const of = (context: CheckContext, kind: Kind): SeatPlace[] =>
  (seatMap(context)?.places ?? []).filter((p) => p.kind === kind);

function knees(context: CheckContext, kind: Kind, places: readonly SeatPlace[]): Finding {
  const { seatHeight, thigh, knee } = context.site.seating;
  const place = lowest(places)!;
  const limit = seatHeight + thigh;
  const over = say(context, Math.max(0, place.thighRoom), 'down');
  const under = called(partOf(context.assembly, place.kneeUnder));
  return {
    check: 'knee room',
    verdict: place.verdict,
    part: place.kneeUnder,
    value: place.kneeHeight,
    limit,
    unit: 'mm',
    because: `${WHERE[kind]} knees have ${say(context, place.kneeHeight, 'down')} over the floor under ${under}, ${say(context, knee)} from the edge; that leaves ${over} over a seat of ${say(context, seatHeight)}, and thighs want ${say(context, thigh, 'up')}`,
    fixes:
      place.verdict === 'ok'
        ? []
        : solvedFixes(context, {
            // A place that is lost gives nobody room for knees.
            measure: (moved) => {
              const there = of(moved, kind);
              return there.length >= places.length ? lowest(there)?.kneeHeight : undefined;
            },
            limit,
            want: 'at least',
            levers: KNEE_LEVERS,
            say: (value: Mm) => say(context, value, 'down'),
          }),
    source: SEATING,
  };
}

function feet(context: CheckContext, kind: Kind, places: readonly SeatPlace[]): Finding[] {
  const meets = firstMet(places);
  if (!meets) return [];
  const { knee } = context.site.seating;
  const part = called(partOf(context.assembly, meets.part));
  return [
    {
      check: 'foot room',
      verdict: 'look again',
      part: meets.part,
      value: meets.deep,
      limit: knee,
      unit: 'mm',
      because: `${WHERE[kind]} feet meet ${part} ${say(context, meets.deep, 'down')} from the edge; a place is ${say(context, knee)} deep`,
      fixes: feetFixes(context, kind, places.length, meets.deep),
      source: SEATING,
    },
  ];
}

function feetFixes(context: CheckContext, kind: Kind, count: number, deep: Mm): string[] {
  const { knee } = context.site.seating;
  const found = solvedFixes(context, {
    measure: (moved) => {
      const there = of(moved, kind);
      return there.length >= count ? (firstMet(there)?.deep ?? knee) : undefined;
    },
    limit: knee,
    want: 'at least',
    levers: FEET_LEVERS,
    say: (value: Mm) => `${say(context, value, 'down')} for feet`,
  });
  return found.length > 0 ? found : [`move it ${say(context, knee - deep, 'up')} towards the middle`];
}

const firstMet = (places: readonly SeatPlace[]): SeatPlace['feetMeet'] =>
  places.flatMap((p) => p.feetMeet ?? []).sort((a, b) => a.deep - b.deep)[0];
