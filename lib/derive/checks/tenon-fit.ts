import { toInner, toOuter } from '../../geometry/frame.ts';
import { cross, dot, sub, type Vec3 } from '../../geometry/vec.ts';
import { type Assembly, partOf, placeOf } from '../../model/assembly.ts';
import type { Body } from '../../model/body.ts';
import type { Mortise } from '../../model/feature.ts';
import type { Finding } from '../../model/finding.ts';
import type { Joint, JointSide } from '../../model/joint.ts';
import type { Part, PartId } from '../../model/part.ts';
import type { Mm } from '../../units/mm.ts';
import { blankOf } from '../solids/solid-of.ts';
import { type Check, type CheckContext, called, say } from './check.ts';

/** Room around a tenon in one of its mortises, mm; negative where it does not go in. */
interface TenonRoom {
  /** At the two ends of the mortise. */
  readonly ends: readonly [Mm, Mm];
  /** At its two cheeks. */
  readonly cheeks: readonly [Mm, Mm];
  /** Between the tip and the floor. */
  readonly floor: Mm;
}

/** Rounding of frames, mm. */
const SAME = 1e-6;

/** A tenon closer than this to where it is drawn is there, mm (our convention). */
const DRAWN = 1e-3;

/** Half the thinner piece: a tenon may be a third to a half of the stock (READ in a magazine's joinery primer; the limit is common practice). */
const SHARE = 0.5;

/** Every loose tenon lies in its two mortises with the play that the design says, and leaves cheeks thick enough. */
export const tenonFit: Check = {
  name: 'tenon fit',
  run(context) {
    const joints = context.assembly.joints.filter((j) => j.tenons.length > 0);
    if (joints.length === 0) return [none(context)];
    return joints.flatMap((joint) => [...misfits(context, joint), share(context, joint)]);
  },
};

function tenonRoom(
  assembly: Assembly,
  tenon: PartId,
  corners: readonly Vec3[],
  side: PartId,
  mortise: Mortise,
): TenonRoom {
  const from = placeOf(assembly, tenon);
  const to = placeOf(assembly, side);
  const points = corners.map((p) => sub(toInner(to, toOuter(from, p)), mortise.at));
  const inside = points.filter((p) => dot(p, mortise.into) > SAME);
  const extent = (axis: Vec3): [number, number] => {
    const d = inside.map((p) => dot(p, axis));
    return [Math.min(...d), Math.max(...d)];
  };
  const room = (axis: Vec3, size: Mm): readonly [Mm, Mm] => {
    const [low, high] = extent(axis);
    return [size / 2 + low, size / 2 - high];
  };
  return {
    ends: room(mortise.along, mortise.length),
    cheeks: room(cross(mortise.into, mortise.along), mortise.width),
    floor: mortise.depth - extent(mortise.into)[1],
  };
}

/** Corners of a tenon in its own frame; the tenons of a joint share their body, which is shaped once. */
function shapedOnce(assembly: Assembly): (tenon: PartId) => readonly Vec3[] {
  const made = new Map<Body, readonly Vec3[]>();
  return (tenon) => {
    const part = partOf(assembly, tenon);
    const corners = made.get(part.body) ?? blankOf(part).vertices;
    made.set(part.body, corners);
    return corners;
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
  const cornersOf = shapedOnce(assembly);
  return joint.tenons.flatMap((tenon, n) =>
    joint.sides.flatMap((side): Finding[] => {
      const { part, mortise } = mortiseOf(assembly, side, n);
      const { ends, cheeks, floor } = tenonRoom(assembly, tenon, cornersOf(tenon), side.part, mortise);
      const off = Math.max(
        ...[...ends, ...cheeks, floor].map((room) => -room),
        ...ends.map((room) => Math.abs(room - mortise.play / 2)),
      );
      if (off < DRAWN) return [];
      return [
        {
          check: tenonFit.name,
          verdict: 'change it',
          part: part.id,
          where: mortise.id,
          value: -off,
          limit: 0,
          unit: 'mm',
          because: `${called(part)}: the tenon ${partOf(assembly, tenon).mark} does not lie in mortise ${mortise.id} as drawn; it is off by ${say(context, off, 'up')}`,
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
    because: `${called(thinner.part)}: the tenons of ${joint.id} take ${Math.ceil(value * 100 - SAME)} % of its thickness; up to ${SHARE * 100} % is usual`,
    fixes: verdict === 'ok' ? [] : [`use tenons ${say(context, thinner.thick * SHARE, 'down')} thick`],
    source: 'common practice, no source',
  };
}

const none = ({ assembly }: CheckContext): Finding => ({
  check: tenonFit.name,
  verdict: 'ok',
  part: assembly.parts[0]!.id,
  unit: 'mm',
  because: 'there are no loose tenons',
  fixes: [],
  source: 'our convention',
});
