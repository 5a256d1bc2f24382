import { toInner, toOuter } from '../../geometry/frame.ts';
import { cross, dot, sub } from '../../geometry/vec.ts';
import { type Assembly, partOf, placeOf } from '../../model/assembly.ts';
import type { Mortise } from '../../model/feature.ts';
import type { Finding } from '../../model/finding.ts';
import type { Joint, JointSide } from '../../model/joint.ts';
import type { Part, PartId } from '../../model/part.ts';
import type { Mm } from '../../units/mm.ts';
import { blankOf } from '../solids/solid-of.ts';
import { type Check, type CheckContext, called, say } from './check.ts';

/** How a tenon lies in one of its mortises, mm. */
export interface TenonPlay {
  /** Along the mortise, both ends together. */
  readonly ends: Mm;
  /** Across its thickness, both cheeks together. */
  readonly cheeks: Mm;
  /** Between the tip and the floor. */
  readonly floor: Mm;
}

/** Rounding of frames, mm. */
const SAME = 1e-6;

/** Half the thinner piece: a tenon may be a third to a half of the stock (READ in a magazine's joinery primer; the limit is common practice). */
const SHARE = 0.5;

/** Every loose tenon lies in its two mortises with the play that the design says, and leaves cheeks thick enough. */
export const tenonFit: Check = {
  name: 'tenon fit',
  run(context) {
    const joints = context.assembly.joints.filter((j) => j.tenons.length > 0);
    return joints.flatMap((joint) => [...misfits(context, joint), share(context, joint)]);
  },
};

/** Play of a tenon in a mortise; a negative play means that it does not go in. */
export function tenonPlay(assembly: Assembly, tenon: PartId, side: PartId, mortise: Mortise): TenonPlay {
  const from = placeOf(assembly, tenon);
  const to = placeOf(assembly, side);
  const points = blankOf(partOf(assembly, tenon)).vertices.map((p) => sub(toInner(to, toOuter(from, p)), mortise.at));
  const inside = points.filter((p) => dot(p, mortise.into) > SAME);
  const across = cross(mortise.into, mortise.along);
  const extent = (axis: typeof across): [number, number] => {
    const d = inside.map((p) => dot(p, axis));
    return [Math.min(...d), Math.max(...d)];
  };
  const [low, high] = extent(mortise.along);
  const [near, far] = extent(across);
  const tip = Math.max(...inside.map((p) => dot(p, mortise.into)));
  return {
    ends: 2 * Math.min(mortise.length / 2 + low, mortise.length / 2 - high),
    cheeks: 2 * Math.min(mortise.width / 2 + near, mortise.width / 2 - far),
    floor: mortise.depth - tip,
  };
}

function mortiseOf(assembly: Assembly, side: JointSide, n: number): { part: Part; mortise: Mortise } {
  const part = partOf(assembly, side.part);
  const mortise = part.features.find((f): f is Mortise => f.kind === 'mortise' && f.id === side.features[n]);
  if (!mortise) throw new RangeError(`joint side ${side.part} has no mortise ${side.features[n]}`);
  return { part, mortise };
}

function misfits(context: CheckContext, joint: Joint): Finding[] {
  const { assembly } = context;
  return joint.tenons.flatMap((tenon, n) =>
    joint.sides.flatMap((side): Finding[] => {
      const { part, mortise } = mortiseOf(assembly, side, n);
      const play = tenonPlay(assembly, tenon, side.part, mortise);
      const least = Math.min(play.ends, play.cheeks, play.floor);
      if (least >= -SAME && Math.abs(play.ends - mortise.play) < 1e-3) return [];
      return [
        {
          check: tenonFit.name,
          verdict: 'change it',
          part: part.id,
          where: mortise.id,
          value: least,
          limit: 0,
          unit: 'mm',
          because: `${called(part)}: the tenon ${partOf(assembly, tenon).mark} does not lie in mortise ${mortise.id} as drawn; it is off by ${say(context, Math.abs(Math.min(least, play.ends - mortise.play)), 'up')}`,
          fixes: ['cut both mortises of the joint from the same marks'],
          source: 'geometry of the design',
        },
      ];
    }),
  );
}

/** Thickness of the tenon against the thinner piece, square to its cheeks. */
function share(context: CheckContext, joint: Joint): Finding {
  const { assembly } = context;
  const tenon = partOf(assembly, joint.tenons[0]!);
  const stock = joint.sides.map((side) => {
    const { part, mortise } = mortiseOf(assembly, side, 0);
    const across = cross(mortise.into, mortise.along);
    const d = blankOf(part).vertices.map((p) => dot(p, across));
    const atMortise = part.kind === 'strip' ? part.finished.thickness : Math.max(...d) - Math.min(...d);
    return { part, thick: atMortise };
  });
  const thinner = stock.reduce((a, b) => (b.thick < a.thick ? b : a));
  const value = tenon.finished.thickness / thinner.thick;
  const verdict = value <= SHARE + SAME ? 'ok' : 'look again';
  return {
    check: 'tenon thickness',
    verdict,
    part: thinner.part.id,
    where: joint.id,
    value,
    limit: SHARE,
    unit: 'of the stock',
    because: `${called(thinner.part)}: the tenons of ${joint.id} take ${Math.round(value * 100)} % of its thickness; up to ${SHARE * 100} % is usual`,
    fixes: verdict === 'ok' ? [] : [`use tenons ${say(context, thinner.thick * SHARE, 'down')} thick`],
    source: 'common practice, no source',
  };
}
