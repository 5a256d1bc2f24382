import type { Assembly } from '../../model/assembly.ts';
import type { Finding } from '../../model/finding.ts';
import type { FrameSpot } from './base-frame.ts';
import {
  atMostVerdict,
  beside,
  type Check,
  type CheckContext,
  called,
  fromMemory,
  notChecked,
  say,
  sayShare,
} from './check.ts';
import { jointWork, type WorkingJoint } from './joint-work.ts';
import { sayForce, sayMoment } from './say-load.ts';
import { solvedFixes } from './solve-fix.ts';
import { type JointWarning, jointWarnings } from './solvers/joint-range.ts';
import { OFTEN_LIMITS, ONCE_LIMIT } from './solvers/joint-use.ts';

const UNIT = 'of its strength';

const LEVERS = [
  'frameJoint.railTenonWidth',
  'frameJoint.postTenonWidth',
  'frameJoint.tenonThickness',
  'frameJoint.tenonDepth',
];

/** How hard the loose tenons of the base work under a level push that comes often, and under one shove. */
export const jointStrength: Check = {
  name: 'joint strength',
  run(context) {
    const { joints, needs } = jointWork(context.assembly);
    if (!joints) return [notChecked('joint strength', context.assembly.parts[0]!.id, needs, UNIT)];
    return [
      ...worst(joints, ({ perNewton }) => perNewton).map((joint) => bent(context, joint)),
      ...worst(joints, ({ bareTwist }) => bareTwist).flatMap((joint) => twisted(context, joint)),
    ];
  },
};

/** Joints of one sort are between pieces of the same names: frames A and B are built alike, and so are their posts. */
const sortOf = ({ butting, mate }: FrameSpot): string => `${butting.part.name} to ${mate.part.name}`;

/** Of each sort the joint that has most of something; the first of equal ones. */
function worst(joints: readonly WorkingJoint[], of: (joint: WorkingJoint) => number): WorkingJoint[] {
  const sorts = new Map<string, WorkingJoint>();
  for (const joint of joints) {
    const known = sorts.get(sortOf(joint.spot));
    if (!known || of(joint) > of(known) * (1 + SAME)) sorts.set(sortOf(joint.spot), joint);
  }
  return [...sorts.values()];
}

/** Joints that differ by less than this part work alike. */
const SAME = 1e-6;

function bent(context: CheckContext, joint: WorkingJoint): Finding {
  const { loads } = context;
  const { spot, perNewton } = joint;
  const { ok, least } = OFTEN_LIMITS.value;
  const often = perNewton * loads.push;
  const once = perNewton * loads.shove;
  // What comes often is told, unless it is the one shove alone that is too much.
  const shoved = often <= ok && once > ONCE_LIMIT.value;
  const [load, value, limit] = shoved ? [loads.shove, once, ONCE_LIMIT.value] : [loads.push, often, ok];
  const verdict = once > ONCE_LIMIT.value ? 'change it' : atMostVerdict(often, ok, least);
  const part = spot.butting.part;
  const works = `the joint with ${called(spot.mate.part)} works at ${sayShare(value, beside(verdict).value)} of its estimated strength`;
  const lasts = `${shoved ? 'under one shove' : 'in an everyday push'}; up to ${sayShare(limit)} ${shoved ? 'holds' : 'lasts'}`;
  return {
    check: 'joint strength',
    verdict,
    part: part.id,
    where: spot.joint.id,
    value,
    limit,
    unit: UNIT,
    because: `${called(part)}: ${works} ${lasts}${verdict === 'ok' || shoved ? '' : ', above that it may loosen with use'}`,
    fixes:
      verdict === 'ok'
        ? []
        : solvedFixes(
            context,
            {
              measure: ({ assembly }) => hardestOf(assembly, sortOf(spot)),
              limit: Math.min(ok / loads.push, ONCE_LIMIT.value / loads.shove),
              want: 'at most',
              levers: LEVERS,
              say: (share) => sayShare(share * load),
            },
            perNewton,
          ),
    source: OFTEN_LIMITS.source,
    load: shoved
      ? `a level push of ${sayForce(context, loads.shove)} at the top, once`
      : `a level push of ${sayForce(context, loads.push)} at the top, each way, often`,
    assumptions: [
      'glue on the whole flat cheeks; a loose tenon counts three quarters of one worked on the rail (our convention)',
      'bending across the flat of the tenon is left to the shoulders',
      ...sizeWarnings(context, joint),
    ],
    unconfirmed: [...new Set([spot.butting, spot.mate].flatMap((b) => fromMemory(b.part.wood, ['shear', 'mor'])))],
  };
}

function hardestOf(assembly: Assembly, sort: string): number | undefined {
  const alike = jointWork(assembly).joints?.filter(({ spot }) => sortOf(spot) === sort) ?? [];
  return alike.length > 0 ? Math.max(...alike.map(({ perNewton }) => perNewton)) : undefined;
}

/** A twist that a bare tenon would not bear: shoulders must carry it, and how much they do is not known. */
function twisted(context: CheckContext, { spot, twist, bareTwist }: WorkingJoint): Finding[] {
  const { loads } = context;
  if (bareTwist * loads.push <= 1) return [];
  const [butting, mate] = [spot.butting, spot.mate].map((b) => called(b.part));
  const moment = sayMoment(context, (twist * loads.push) / 1000);
  const needs = `tight glued shoulders: an everyday push twists ${butting} in ${mate} by ${moment}, more than its bare tenon bears`;
  return [{ ...notChecked('joint twist', spot.butting.part.id, needs, 'N m'), where: spot.joint.id }];
}

function sizeWarnings(context: CheckContext, { tenon }: WorkingJoint): string[] {
  const { depths, height } = tenon;
  return jointWarnings({ depths, height, acrossGrain: true }).map((warning) => words(context, warning));
}

function words(context: CheckContext, { about, value, low, high }: JointWarning): string {
  if (about === 'across the grain')
    return `${say(context, value)} of tenon across the grain is more than ${say(context, high!, 'down')}: the wood around it moves too far`;
  return high !== undefined && value > high
    ? `${about} of ${say(context, value)} is more than any tested (${say(context, high)})`
    : `${about} of ${say(context, value)} is less than any tested (${say(context, low!)})`;
}
