import { turnOut } from '../../geometry/frame.ts';
import { dot } from '../../geometry/vec.ts';
import { partOf } from '../../model/assembly.ts';
import type { Mortise } from '../../model/feature.ts';
import type { Finding } from '../../model/finding.ts';
import { speciesById } from '../../wood/species-list.ts';
import type { FrameSpot } from './base-frame.ts';
import { barZ } from './base-members.ts';
import { atMostVerdict, type Check, type CheckContext, called, notChecked, say } from './check.ts';
import { type PushedBase, pushedBase, WAYS } from './pushed-base.ts';
import { solvedFixes } from './solve-fix.ts';
import type { EndForces } from './solvers/frame-model.ts';
import { jointWarnings } from './solvers/joint-range.ts';
import { GLUED_GRIP } from './solvers/joint-stiffness.ts';
import type { Tenon } from './solvers/joint-strength.ts';
import { jointUse, OFTEN_LIMITS, ONCE_LIMIT } from './solvers/joint-use.ts';

type Solved = Extract<PushedBase, { kind: 'solved' }>;

/** Flat cheeks glued over their whole height, as makers do. */
const KIND = { loose: true, ends: 'round', flatsGlued: true } as const;

/** How hard the loose tenons of the base work under a level push that comes often, and under one shove. */
export const jointStrength: Check = {
  name: 'joint strength',
  run(context) {
    const { assembly, loads } = context;
    const pushed = pushedBase(assembly, loads.push, GLUED_GRIP.value.high);
    const part = assembly.parts[0]!.id;
    if (pushed.kind === 'unknown') return [notChecked('joint strength', part, pushed.needs, 'of its strength')];
    if (pushed.kind === 'mechanism')
      return [notChecked('joint strength', part, 'a base that stands', 'of its strength')];
    return alike(pushed).map((spot) => finding(context, pushed, spot));
  },
};

/** The joint of each sort that works hardest: frames A and B are built alike, and so are the posts of a frame. */
function alike(pushed: Solved): FrameSpot[] {
  const groups = new Map<string, FrameSpot>();
  for (const spot of pushed.base.spots) {
    const key = `${spot.butting.part.name} ${spot.mate.part.name} ${spot.end}`.replace(
      / (from|to)$/,
      spot.butting.part.kind === 'post' ? ' $1' : '',
    );
    const known = groups.get(key);
    if (!known || worstUse(pushed, spot) > worstUse(pushed, known)) groups.set(key, spot);
  }
  return [...groups.values()];
}

interface Sized {
  readonly tenon: Tenon;
  readonly count: number;
  readonly inPlane: (forces: EndForces) => { moment: number; shear: number };
}

/** The tenon of a joint as the strength formulas see it; undefined when a strength of its wood is not known. */
function sized({ joint, butting, mate }: FrameSpot): Sized | undefined {
  const woods = [butting, mate].map((b) => speciesById(b.part.wood));
  const strengths = woods.flatMap((w) => (w.shear && w.mor ? [{ shear: w.shear.value, bending: w.mor.value }] : []));
  if (strengths.length < 2) return undefined;
  const side = joint.sides.find((s) => s.part === butting.part.id)!;
  const cut = butting.part.features.find((f): f is Mortise => f.kind === 'mortise' && f.id === side.features[0])!;
  const depth = cut.depth;
  const along = turnOut(butting.frame, cut.along);
  // The tenon is wide along y of the piece, or along its z: that decides which moment bends it in its own plane.
  const wideAlongZ = Math.abs(dot(along, barZ(butting))) > 0.5;
  return {
    tenon: {
      depths: [depth, depth],
      height: cut.length - cut.play,
      thickness: cut.width,
      shear: Math.min(...strengths.map((s) => s.shear)),
      bending: Math.min(...strengths.map((s) => s.bending)),
    },
    count: joint.tenons.length,
    inPlane: (f) => (wideAlongZ ? { moment: f.momentY, shear: f.shearZ } : { moment: f.momentZ, shear: f.shearY }),
  };
}

function worstUse(pushed: Solved, spot: FrameSpot): number {
  const size = sized(spot);
  if (!size) return Number.POSITIVE_INFINITY;
  return Math.max(
    ...WAYS.map((way) => {
      const { moment, shear } = size.inPlane(pushed.cases[way].ends.get(spot.member)![spot.end]);
      return jointUse(size.tenon, KIND, moment / size.count, shear / size.count).use;
    }),
  );
}

function finding(context: CheckContext, pushed: Solved, spot: FrameSpot): Finding {
  const { loads } = context;
  const part = partOf(context.assembly, spot.butting.part.id);
  const size = sized(spot);
  if (!size)
    return notChecked(
      'joint strength',
      part.id,
      `shear and bending strength of ${speciesById(part.wood).name}`,
      'of its strength',
    );
  const value = worstUse(pushed, spot);
  const { ok, least } = OFTEN_LIMITS.value;
  const once = (value * loads.shove) / loads.push;
  const verdict = once > ONCE_LIMIT.value ? 'change it' : atMostVerdict(value, ok, least);
  const percent = (share: number): string => `${Math.round(share * 100)} %`;
  const warnings = jointWarnings({ depths: size.tenon.depths, height: size.tenon.height, acrossGrain: true });
  return {
    check: 'joint strength',
    verdict,
    part: part.id,
    where: spot.joint.id,
    value,
    limit: ok,
    unit: 'of its strength',
    because: `${called(part)}: the joint with ${called(spot.mate.part)} works at ${percent(value)} of its estimated strength in an everyday push; up to ${percent(ok)} lasts${verdict === 'ok' ? '' : ', above that it may loosen with use'}`,
    fixes:
      verdict === 'ok'
        ? []
        : solvedFixes(
            context,
            {
              measure: (c) => measure(c, spot.joint.id),
              limit: ok,
              want: 'at most',
              levers: [
                'frameJoint.railTenonWidth',
                'frameJoint.postTenonWidth',
                'frameJoint.tenonThickness',
                'frameJoint.tenonDepth',
              ],
              say: percent,
            },
            value,
          ),
    source: OFTEN_LIMITS.source,
    load: `a level push of ${loads.push} N at the top, each way, often`,
    assumptions: [
      'glue on the whole flat cheeks; a loose tenon counts three quarters of one worked on the rail (our convention)',
      ...warnings.map((w) =>
        w.high !== undefined && w.value > w.high
          ? `${w.about} of ${say(context, w.value)} is more than any tested (${say(context, w.high)})`
          : `${w.about} of ${say(context, w.value)} is less than any tested`,
      ),
    ],
  };
}

function measure({ assembly, loads }: CheckContext, joint: string): number | undefined {
  const pushed = pushedBase(assembly, loads.push, GLUED_GRIP.value.high);
  if (pushed.kind !== 'solved') return undefined;
  const spot = pushed.base.spots.find((s) => s.joint.id === joint);
  return spot && worstUse(pushed, spot);
}
