import type { Finding } from '../../model/finding.ts';
import { atLeastVerdict, type CheckContext, notChecked, say } from './check.ts';
import { frameLoads, type Load } from './packed-loads.ts';
import { spareInDoor } from './route-ways.ts';
import { ENOUGH, KNUCKLES, LOAD_LEVERS, packed, sameLoad } from './route-words.ts';
import { solvedFixes } from './solve-fix.ts';

const CHECK = 'way in, door';

/** Every load straight through the door, end first: on edge, or flat where that is better. */
export function throughDoor(context: CheckContext, loads: readonly Load[]): Finding[] {
  const { doorWidth, doorHeight } = context.site.route;
  if (doorWidth > 0 && doorHeight > 0) return loads.map((load) => pass(context, load));
  const needs = [
    ...(doorWidth > 0 ? [] : ['the door width (site.route.doorWidth)']),
    ...(doorHeight > 0 ? [] : ['the door height (site.route.doorHeight)']),
  ];
  return [notChecked(CHECK, loads[0]!.part, needs.join(' and '))];
}

const spareOf = ({ site: { route } }: CheckContext, load: Load): number =>
  spareInDoor(load, route.doorWidth, route.doorHeight);

function pass(context: CheckContext, load: Load): Finding {
  const { doorWidth, doorHeight, packing } = context.site.route;
  const spare = spareOf(context, load);
  const verdict = atLeastVerdict(spare, KNUCKLES, 0);
  const door = `a door ${say(context, doorWidth)} wide and ${say(context, doorHeight)} high`;
  const frames = spare < 0 && load.kind === 'base' ? frameLoads(context.assembly, packing) : [];
  const apart = frames.length > 0 && frames.every((f) => spareOf(context, f) >= 0);
  return {
    check: CHECK,
    verdict: apart ? 'look again' : verdict,
    part: load.part,
    value: spare,
    limit: KNUCKLES,
    unit: 'mm',
    because:
      spare >= 0
        ? `${packed(context, load)} goes through ${door} with ${say(context, spare, 'down')} to spare`
        : `${packed(context, load)} does not go through ${door}: ${say(context, -spare, 'up')} is missing`,
    fixes: apart
      ? ['carry the frames in one by one and join the stretchers in the room']
      : verdict === 'ok'
        ? []
        : fixes(context, load),
    source: 'geometry of the design; 1 in to spare for hands is our convention',
  };
}

const fixes = (context: CheckContext, load: Load): string[] =>
  solvedFixes(context, {
    measure: (moved) => {
      const same = sameLoad(moved, load);
      return same && spareOf(moved, same);
    },
    limit: ENOUGH,
    want: 'at least',
    levers: LOAD_LEVERS[load.kind],
    say: (spare) => `${say(context, spare, 'down')} to spare`,
  });
