import { turnOut } from '../../geometry/frame.ts';
import { dot, scale, type Vec3 } from '../../geometry/vec.ts';
import { type Assembly, partOf, placeOf } from '../../model/assembly.ts';
import { isPocket } from '../../model/feature.ts';
import type { Joint } from '../../model/joint.ts';
import { isGlueUp, type PartId } from '../../model/part.ts';
import type { Mm } from '../../units/mm.ts';
import type { Bounds } from '../solids/solid.ts';

/** One piece is to stand off another one. */
export interface Pull {
  readonly from: PartId;
  readonly to: PartId;
  /** mm in the table's frame, from one to the other. */
  readonly by: Vec3;
  /** How much it counts. */
  readonly weight: number;
  /** Tenons that float between the two. */
  readonly tenons: readonly PartId[];
}

/** mm between two pieces without a tenon between them, and more than a tenon is long with one: our convention. */
const PLAIN: { readonly [K in Joint['kind']]: Mm } = { edge: 40, layer: 60, frame: 90, pad: 70 };
const BESIDE_TENON: Mm = 50;
/** mm between two pieces that are screwed together when nothing else is said, and how much that counts beside a joint: our convention. */
const SCREWED: Mm = 200;
const SCREW = 0.02;

/**
 * What pulls pieces apart: every joint along its own direction, and the top off its base.
 *
 * @param boxes around the pieces that are shown, table's frame.
 * @param screwed mm between two pieces that are screwed together.
 */
export function pullsOf(assembly: Assembly, boxes: ReadonlyMap<PartId, Bounds>, screwed: Mm = SCREWED): Pull[] {
  const shownAs = (id: PartId): readonly PartId[] => {
    if (boxes.has(id)) return [id];
    const part = partOf(assembly, id);
    if (isGlueUp(part)) return part.members.filter((member) => boxes.has(member));
    return assembly.parts.filter((p) => p.members?.includes(id) && boxes.has(p.id)).map((p) => p.id);
  };
  const joints = assembly.joints.flatMap((joint): Pull[] => {
    const [first, second] = joint.sides.map((side) => shownAs(side.part)) as [readonly PartId[], readonly PartId[]];
    return first.flatMap((from) =>
      second.filter((to) => to !== from).map((to) => jointPull(assembly, joint, from, to, boxes)),
    );
  });
  const screws = assembly.fixings.flatMap((fixing): Pull[] => {
    const base = partOf(assembly, fixing.base);
    const hole = base.features.filter(isPocket).find((feature) => feature.id === fixing.baseFeature);
    if (!hole || !boxes.has(base.id)) return [];
    const along = turnOut(placeOf(assembly, base.id), hole.into);
    const shown = shownAs(fixing.into);
    // Boards of a glued top are few or many: together they count as one, and their joints more than the screws.
    const weight = SCREW / shown.length;
    return shown.map((to) => ({ from: base.id, to, by: scale(along, screwed), weight, tenons: [] }));
  });
  return [...joints, ...screws];
}

function jointPull(
  assembly: Assembly,
  joint: Joint,
  from: PartId,
  to: PartId,
  boxes: ReadonlyMap<PartId, Bounds>,
): Pull {
  const { tenons, kind } = joint;
  const [a, b] = [boxes.get(from)!, boxes.get(to)!];
  const long = Math.max(0, ...tenons.map((id) => partOf(assembly, id).finished.length));
  const gap = tenons.length > 0 ? long + BESIDE_TENON : PLAIN[kind];
  const along = tenons.length > 0 ? placeOf(assembly, tenons[0]!).x : meetingAxis(a, b);
  const ahead = dot(along, middleOf(b)) >= dot(along, middleOf(a)) ? 1 : -1;
  return { from, to, by: scale(along, ahead * gap), weight: 1, tenons };
}

const middleOf = ({ min, max }: Bounds): Vec3 => [0, 1, 2].map((k) => (min[k]! + max[k]!) / 2) as unknown as Vec3;

/** The axis along which two boxes overlap least: the one across their joint. */
function meetingAxis(a: Bounds, b: Bounds): Vec3 {
  const overlap = ([0, 1, 2] as const).map((k) => Math.min(a.max[k], b.max[k]) - Math.max(a.min[k], b.min[k]));
  const least = overlap.indexOf(Math.min(...overlap));
  return [0, 1, 2].map((k) => (k === least ? 1 : 0)) as unknown as Vec3;
}
