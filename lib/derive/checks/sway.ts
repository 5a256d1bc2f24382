import { partOf } from '../../model/assembly.ts';
import type { Finding, Verdict } from '../../model/finding.ts';
import { ONE_FRAME } from './base-links.ts';
import { baseParts, twistRatios } from './base-members.ts';
import {
  atMostVerdict,
  beside,
  type Check,
  type CheckContext,
  called,
  fromMemory,
  notChecked,
  sayMove,
} from './check.ts';
import { type PushedBase, pushedBase, WAYS, type Way } from './pushed-base.ts';
import { sayForce } from './say-load.ts';
import { solvedFixes } from './solve-fix.ts';
import { SWAY_LIMITS, swayFrequency } from './solvers/frame-sway.ts';
import { GLUED_GRIP } from './solvers/joint-stiffness.ts';
import { mostFrom } from './sway-cause.ts';

type Solved = Extract<PushedBase, { kind: 'solved' }>;
type Mechanism = Extract<PushedBase, { kind: 'mechanism' }>;

const LEVERS: { readonly [W in Way]: readonly string[] } = {
  along: ['lowerRail.thickness', 'stretcher.depth', 'panelLeg.thickness', 'post.thickness', 'stretcher.thickness'],
  across: ['post.width', 'lowerRail.depth', 'bearer.depth', 'upperRail.depth', 'post.spacing'],
};

/** How far the top goes when someone pushes it level, along and across: the joints at their softest. */
export const sway: Check = {
  name: 'sway',
  run(context) {
    const { assembly, loads } = context;
    const soft = pushedBase(assembly, loads.push, GLUED_GRIP.value.low);
    const part = assembly.parts[0]!.id;
    if (soft.kind === 'unknown') return [notChecked('sway', part, soft.needs)];
    if (soft.kind === 'mechanism') return [mechanism(context, soft)];
    const firm = pushedBase(assembly, loads.push, GLUED_GRIP.value.high);
    return WAYS.map((way) => finding(context, soft, firm.kind === 'solved' ? firm.sway[way] : soft.sway[way], way));
  },
};

function mechanism(context: CheckContext, loose: Mechanism): Finding {
  const fixes = solvedFixes(context, {
    measure: (c) => swayOf(c, 'along'),
    limit: SWAY_LIMITS.value.some,
    want: 'at most',
    levers: ['stretcher.count'],
    say: (mm) => sayMove(context, mm),
  });
  const { because, fix } = story(context, loose);
  return {
    check: 'sway',
    verdict: 'change it',
    part: loose.part,
    unit: 'mm',
    because,
    fixes: fixes.length > 0 ? fixes : [fix],
    source: SWAY_LIMITS.source,
    load: `a level push of ${sayForce(context, context.loads.push)}`,
  };
}

/** What moves, and what would hold it when no parameter does. */
function story({ assembly }: CheckContext, loose: Mechanism): { readonly because: string; readonly fix: string } {
  if (!loose.lengthwise) {
    const piece = called(partOf(assembly, loose.part));
    return { because: `${piece} is loose: it moves though no piece bends`, fix: `give ${piece} one more joint` };
  }
  const xs = loose.model.contacts.map(([x]) => x);
  return Math.max(...xs) - Math.min(...xs) < ONE_FRAME
    ? {
        because: 'it stands on one line across the table: a push along the table tips it over',
        fix: 'stand it on feet that reach along the table',
      }
    : {
        because: 'nothing holds the frames upright lengthwise: a push along the table folds them',
        fix: 'add a stretcher',
      };
}

/** Sway of a piece that is only tried; undefined when it folds. */
function swayOf({ assembly, loads }: CheckContext, way: Way): number | undefined {
  const pushed = pushedBase(assembly, loads.push, GLUED_GRIP.value.low);
  return pushed.kind === 'solved' ? pushed.sway[way] : undefined;
}

function finding(context: CheckContext, soft: Solved, firm: number, way: Way): Finding {
  const { assembly, loads } = context;
  const value = soft.sway[way];
  const { solid, some } = SWAY_LIMITS.value;
  const verdict = atMostVerdict(value, solid, some);
  const cause = verdict === 'ok' ? '' : `, mostly from ${mostFrom(context, value, way)}`;
  const moved = sayMove(context, value, beside(verdict).value);
  const swings = value > 0 ? swayFrequency(loads.push / value, soft.model.topMass.mass) : undefined;
  const swing = swings === undefined ? '' : `, it swings ${swings.toFixed(1)} times a second`;
  const pieces = baseParts(assembly);
  const woods = [...new Set(pieces.map((p) => p.wood))];
  return {
    check: `sway ${way}`,
    verdict,
    part: soft.model.bearings[0]!.part,
    value,
    limit: solid,
    unit: 'mm',
    because: `a push of ${sayForce(context, loads.push)} ${way} the table moves the top ${moved}${cause}; ${FEEL[verdict]} (up to ${sayMove(context, solid, beside(verdict).limit)} is solid${swing})`,
    fixes:
      verdict === 'ok'
        ? []
        : solvedFixes(
            context,
            {
              measure: (c) => swayOf(c, way),
              limit: solid,
              want: 'at most',
              levers: LEVERS[way],
              say: (mm) => sayMove(context, mm),
            },
            value,
          ),
    source: SWAY_LIMITS.source,
    load: `a level push of ${sayForce(context, loads.push)} at the top`,
    range: [firm, value],
    assumptions: [
      'feet held by friction, across the table one foot of each frame; the top stiff in itself and hinged on the frames',
      `joints keep ${GLUED_GRIP.value.low} to ${GLUED_GRIP.value.high} of the stiffness of the wood across the grain (${GLUED_GRIP.source})`,
      ...new Set(pieces.flatMap((p) => twistRatios(p).flatMap((r) => r.assumptions))),
    ],
    unconfirmed: woods.flatMap((wood) => fromMemory(wood, ['moe', 'etOverEl', 'gltOverEl', 'glrOverEl'])),
  };
}

const FEEL: { readonly [V in Verdict]: string } = {
  ok: 'it feels solid',
  'look again': 'it has some give',
  'change it': 'it is wobbly',
  'not checked': 'it is not known',
};
