import type { Finding } from '../../model/finding.ts';
import type { Mm } from '../../units/mm.ts';
import { atLeastVerdict, type CheckContext, notChecked, say } from './check.ts';
import type { Load } from './packed-loads.ts';
import { swing } from './route-ways.ts';
import { ENOUGH, KNUCKLES, LOAD_LEVERS, packed, sameLoad } from './route-words.ts';
import { solvedFixes } from './solve-fix.ts';

const CHECK = 'way in, ceiling';

/** Height of the hands that carry a thing on edge, over the floor: 6 in under it (our convention). */
const CARRIED: Mm = 152.4;

/** The highest load on edge under the lowest ceiling, and whether one can be stood upright there. */
export function underCeiling(context: CheckContext, loads: readonly Load[]): Finding[] {
  const { ceiling } = context.site.route;
  if (!(ceiling > 0)) return [notChecked(CHECK, loads[0]!.part, 'the lowest ceiling (site.route.ceiling)')];
  const load = loads.reduce((a, b) => (b.sides[1] > a.sides[1] ? b : a));
  const [long, middle, short] = load.sides;
  const value = ceiling - middle - CARRIED;
  const verdict = atLeastVerdict(value, KNUCKLES, 0);
  const up = swing(long, short);
  const stand = `to stand it up takes ${say(context, up, 'up')}${up <= ceiling ? '' : ', so not here'}`;
  return [
    {
      check: CHECK,
      verdict,
      part: load.part,
      value,
      limit: KNUCKLES,
      unit: 'mm',
      because: `${packed(context, load)}, carried on edge ${say(context, CARRIED)} over the floor, has ${value < 0 ? 'no room' : `${say(context, value, 'down')} to spare`} under a ceiling of ${say(context, ceiling)}; ${stand}`,
      fixes:
        verdict === 'ok'
          ? []
          : [
              ...solvedFixes(context, {
                measure: (moved) => {
                  const same = sameLoad(moved, load);
                  return same && ceiling - same.sides[1] - CARRIED;
                },
                limit: ENOUGH,
                want: 'at least',
                levers: LOAD_LEVERS[load.kind].filter((path) => path !== 'top.length'),
                say: (spare) => `${say(context, spare, 'down')} to spare`,
              }),
              'carry it flat where the ceiling is low',
            ],
      source: 'geometry of the design; 6 in under the load and 1 in to spare are our convention',
    },
  ];
}
