import { partOf } from '../../model/assembly.ts';
import type { Finding } from '../../model/finding.ts';
import type { PartKind } from '../../model/part.ts';
import type { BaseFrame } from './base-frame.ts';
import { baseParts } from './base-members.ts';
import { atMostVerdict, type Check, type CheckContext, fromMemory, notChecked, sayMove } from './check.ts';
import { type PushedBase, pushedBase, WAYS, type Way } from './pushed-base.ts';
import { solvedFixes } from './solve-fix.ts';
import { SWAY_LIMITS, swayFrequency } from './solvers/frame-sway.ts';
import { GLUED_GRIP } from './solvers/joint-stiffness.ts';

type Solved = Extract<PushedBase, { kind: 'solved' }>;

const LEVERS: { readonly [W in Way]: readonly string[] } = {
  along: ['lowerRail.thickness', 'stretcher.depth', 'panelLeg.thickness', 'post.thickness', 'stretcher.thickness'],
  across: ['post.width', 'lowerRail.depth', 'bearer.depth', 'upperRail.depth', 'post.spacing'],
};

/** A piece made this much stiffer no longer gives: what is left tells how much it gave. */
const RIGID = 1e4;

/** How far the top goes when someone pushes it level, along and across: the joints at their softest. */
export const sway: Check = {
  name: 'sway',
  run(context) {
    const { assembly, loads } = context;
    const soft = pushedBase(assembly, loads.push, GLUED_GRIP.value.low);
    const part = assembly.parts[0]!.id;
    if (soft.kind === 'unknown') return [notChecked('sway', part, soft.needs)];
    if (soft.kind === 'mechanism') return [mechanism(context, soft.loose.node, soft.loose.direction)];
    const firm = pushedBase(assembly, loads.push, GLUED_GRIP.value.high);
    return WAYS.map((way) => finding(context, soft, firm.kind === 'solved' ? firm.sway[way] : soft.sway[way], way));
  },
};

function mechanism(context: CheckContext, node: string, direction: string): Finding {
  const lengthwise = direction === 'x' || direction === 'ry';
  const fixes = solvedFixes(context, {
    measure: ({ assembly, loads }) => {
      const pushed = pushedBase(assembly, loads.push, GLUED_GRIP.value.low);
      return pushed.kind === 'solved' ? pushed.sway.along : undefined;
    },
    limit: SWAY_LIMITS.value.some,
    want: 'at most',
    levers: ['stretcher.count'],
    say: (mm) => sayMove(context, mm),
  });
  return {
    check: 'sway',
    verdict: 'change it',
    part: context.assembly.parts[0]!.id,
    where: node,
    unit: 'mm',
    because: lengthwise
      ? 'nothing holds the frames upright lengthwise: a push along the table folds them'
      : `the base is loose at ${node}: it moves though no piece bends`,
    fixes: fixes.length > 0 ? fixes : ['add a stretcher'],
    source: SWAY_LIMITS.source,
    load: `a level push of ${context.loads.push} N`,
  };
}

function finding(context: CheckContext, soft: Solved, firm: number, way: Way): Finding {
  const { assembly, loads } = context;
  const value = soft.sway[way];
  const { solid, some } = SWAY_LIMITS.value;
  const verdict = atMostVerdict(value, solid, some);
  const cause = verdict === 'ok' ? '' : `, mostly from ${giving(context, value, way)}`;
  const feel = verdict === 'change it' ? 'it is wobbly' : verdict === 'ok' ? 'it feels solid' : 'it has some give';
  const woods = [...new Set(baseParts(assembly).map((p) => p.wood))];
  const hertz = swayFrequency(loads.push / value, soft.model.topMass.mass);
  return {
    check: `sway ${way}`,
    verdict,
    part: soft.model.bearings[0]!.part,
    value,
    limit: solid,
    unit: 'mm',
    because: `a push of ${loads.push} N ${way} the table moves the top ${sayMove(context, value)}${cause}; ${feel} (up to ${sayMove(context, solid)} is solid, it swings ${hertz.toFixed(1)} times a second)`,
    fixes:
      verdict === 'ok'
        ? []
        : solvedFixes(
            context,
            {
              measure: (c) => {
                const pushed = pushedBase(c.assembly, c.loads.push, GLUED_GRIP.value.low);
                return pushed.kind === 'solved' ? pushed.sway[way] : undefined;
              },
              limit: solid,
              want: 'at most',
              levers: LEVERS[way],
              say: (mm) => sayMove(context, mm),
            },
            value,
          ),
    source: SWAY_LIMITS.source,
    load: `a level push of ${loads.push} N at the top`,
    range: [firm, value],
    assumptions: [
      'feet held by friction, the top stiff in itself and hinged on the frames',
      `joints keep ${GLUED_GRIP.value.low} to ${GLUED_GRIP.value.high} of the stiffness of the wood across the grain (${GLUED_GRIP.source})`,
    ],
    unconfirmed: woods.flatMap((wood) => fromMemory(wood, ['etOverEl', 'gltOverEl', 'glrOverEl'])),
  };
}

const NAMES: Partial<{ readonly [K in PartKind]: string }> = {
  post: 'the posts',
  panelLeg: 'the panel legs',
  rail: 'the rails',
  bearer: 'the bearers',
  stretcher: 'the stretchers',
  foot: 'the feet',
};

/** What gives most: the joints, or one kind of piece, found by making each rigid in turn. */
function giving(context: CheckContext, value: number, way: Way): string {
  const { assembly, loads } = context;
  const without = (change: (base: BaseFrame) => BaseFrame): number => {
    const pushed = pushedBase(assembly, loads.push, GLUED_GRIP.value.low, change);
    return pushed.kind === 'solved' ? value - pushed.sway[way] : 0;
  };
  const shares = [
    { words: 'the joints', share: without(rigidJoints) },
    ...Object.entries(NAMES).map(([kind, words]) => ({
      words,
      share: without((base) => stiffened(base, (id) => partOf(assembly, id).kind === kind)),
    })),
  ];
  return shares.reduce((a, b) => (b.share > a.share ? b : a)).words;
}

const rigidJoints = (base: BaseFrame): BaseFrame => ({
  ...base,
  frame: {
    ...base.frame,
    members: base.frame.members.map((m) => (isLink(m.name) ? m : { ...m, springs: { from: {}, to: {} } })),
  },
});

const stiffened = (base: BaseFrame, which: (part: string) => boolean): BaseFrame => ({
  ...base,
  frame: {
    ...base.frame,
    members: base.frame.members.map((m) => {
      if (isLink(m.name) || !which(m.name.slice(0, m.name.lastIndexOf(' ')))) return m;
      const { area, iy, iz, j } = m.section;
      return { ...m, section: { area: area * RIGID, iy: iy * RIGID, iz: iz * RIGID, j: j * RIGID } };
    }),
  },
});

const isLink = (member: string): boolean => /^(pad|under|top) /.test(member);
