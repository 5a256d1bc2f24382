import type { Finding } from '../../model/finding.ts';
import type { Mm } from '../../units/mm.ts';
import { atLeastVerdict, type CheckContext, notChecked, say } from './check.ts';
import { type Corner, corridorFor } from './corner-turn.ts';
import { frameLoads, type Load } from './packed-loads.ts';
import { type Way, waysAround } from './route-ways.ts';
import { ENOUGH, KNUCKLES, LOAD_LEVERS, packed, sameLoad } from './route-words.ts';
import { solvedFixes } from './solve-fix.ts';

const CHECK = 'way in, corner';

const SOURCE = 'geometry of a level turn; 1 in to spare for hands is our convention';

/** Longer than this a thing does not turn upright under a door head: one delivering maker's rule, read in excerpt. */
const DOOR_HEAD: Mm = 77 * 25.4;

/** Every load around the corner from the corridor into the next one. */
export function aroundCorner(context: CheckContext, loads: readonly Load[]): Finding[] {
  const { corridor } = context.site.route;
  if (corridor > 0) return loads.map((load) => turn(context, load));
  return [notChecked(CHECK, loads[0]!.part, 'the corridor width (site.route.corridor)')];
}

const cornerOf = ({ site: { route } }: CheckContext): Corner => ({
  before: route.corridor,
  after: route.corridorAfter || route.corridor,
});

/** The first way that works with room for hands, or else the one with most to spare. */
function bestWay(context: CheckContext, load: Load): Way {
  const ways = waysAround(load, cornerOf(context), context.site.route.ceiling);
  return ways.find((w) => w.spare >= KNUCKLES) ?? ways.reduce((a, b) => (b.spare > a.spare ? b : a));
}

function turn(context: CheckContext, load: Load): Finding {
  const way = bestWay(context, load);
  const apart = way.spare < 0 && load.kind === 'base' ? inFrames(context) : undefined;
  const known = context.site.route.corridorAfter > 0;
  const upright = way.hold === 'upright' && way.spare >= 0;
  const fits = atLeastVerdict(way.spare, KNUCKLES, 0);
  return {
    check: CHECK,
    verdict: fits === 'ok' && !upright ? 'ok' : fits === 'change it' && !apart ? 'change it' : 'look again',
    part: load.part,
    value: way.spare,
    limit: KNUCKLES,
    unit: 'mm',
    because: `${packed(context, load)} ${sentence(context, load, way)}`,
    fixes: apart ? [apart] : fits === 'ok' ? [] : fixes(context, load),
    source: upright && load.sides[0] > DOOR_HEAD ? `${SOURCE}; one maker's rule for upright turns` : SOURCE,
    ...(known ? {} : { assumptions: ['the corridor after the turn is as wide as the one before'] }),
  };
}

function sentence(context: CheckContext, load: Load, { hold, spare, longest }: Way): string {
  const { before, after } = cornerOf(context);
  const corridors =
    before === after
      ? `two corridors of ${say(context, before)}`
      : `corridors of ${say(context, before)} and ${say(context, after)}`;
  if (spare < 0) {
    const most = longest > 0 ? `at most ${say(context, longest, 'down')} turns` : 'it is too wide for them';
    return `does not turn between ${corridors}: held ${hold}, ${most}`;
  }
  if (hold !== 'upright')
    return `turns level between ${corridors}, held ${hold}, with ${say(context, spare, 'down')} to spare`;
  const rule =
    load.sides[0] > DOOR_HEAD
      ? `; by one maker's rule nothing over ${say(context, DOOR_HEAD)} turns upright under a door head`
      : '';
  return `turns between ${corridors} only stood upright${rule}`;
}

/** The base in pieces, when each of them turns. */
function inFrames(context: CheckContext): string | undefined {
  const frames = frameLoads(context.assembly, context.site.route.packing);
  if (frames.length === 0 || frames.some((f) => bestWay(context, f).spare < 0)) return undefined;
  return 'carry the frames in one by one and join the stretchers in the room';
}

function fixes(context: CheckContext, load: Load): string[] {
  const smaller = solvedFixes(context, {
    measure: (moved) => {
      const same = sameLoad(moved, load);
      return same && bestWay(moved, same).spare;
    },
    limit: ENOUGH,
    want: 'at least',
    levers: LOAD_LEVERS[load.kind],
    say: (spare) => `${say(context, spare, 'down')} to spare`,
  });
  const [long, , short] = load.sides;
  return [...smaller, `corridors of ${say(context, corridorFor(long + KNUCKLES, short), 'up')} would do, held on edge`];
}
