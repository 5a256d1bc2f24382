import type { Finding } from '../../model/finding.ts';
import type { Mm } from '../../units/mm.ts';
import { SEATING } from './access-lines.ts';
import { type CheckContext, say } from './check.ts';
import { type SeatMap, seatMap } from './seat-map.ts';
import { inTheWay, mostInTheWay } from './seat-way.ts';
import { solvedFixes } from './solve-fix.ts';

/** What moves a piece away from the legs of those at a side. */
const LEVERS = ['post.spacing', 'stretcher.spacing', 'panelLeg.width', 'top.width'] as const;

/** Long sides at which nobody can sit, though they are long enough. */
export function blockedSides(context: CheckContext, map: SeatMap): Finding[] {
  const { knee, least } = context.site.seating;
  const sides = map.edges.slice(0, map.oneSided ? 1 : 2);
  const blocked = sides.filter((s) => s.places.length === 0 && s.edge.length >= least);
  const [first] = blocked;
  const legs = first && mostInTheWay(first, knee);
  if (!first || !legs) return [];
  const where = blocked.length === 2 ? 'the long sides' : `the ${first.edge.name}`;
  return [
    {
      check: 'knee depth',
      verdict: 'look again',
      part: legs.part,
      value: legs.deep,
      limit: knee,
      unit: 'mm',
      because: `nobody can sit on ${where}: ${inTheWay(context, first)}`,
      fixes: solvedFixes(context, {
        measure: depthOf,
        limit: knee,
        want: 'at least',
        levers: LEVERS,
        say: (value) => `${say(context, value, 'down')} for knees`,
      }),
      source: SEATING,
    },
  ];
}

function depthOf(context: CheckContext): Mm | undefined {
  const { knee } = context.site.seating;
  const map = seatMap(context);
  if (!map) return undefined;
  const [side] = map.edges;
  return side.places.length > 0 ? knee : mostInTheWay(side, knee)?.deep;
}
