import { turnOut } from '../../geometry/frame.ts';
import { dot } from '../../geometry/vec.ts';
import { type Assembly, partOf } from '../../model/assembly.ts';
import type { Mortise } from '../../model/feature.ts';
import { missing } from '../../wood/confidence.ts';
import { FIELD_LABELS } from '../../wood/field-labels.ts';
import { speciesById } from '../../wood/species-list.ts';
import type { FrameSpot } from './base-frame.ts';
import { barZ } from './base-members.ts';
import { pushedBase, WAYS } from './pushed-base.ts';
import type { EndForces } from './solvers/frame-model.ts';
import { GLUED_GRIP } from './solvers/joint-stiffness.ts';
import type { Tenon } from './solvers/joint-strength.ts';
import { jointUse } from './solvers/joint-use.ts';
import { twistShear } from './solvers/twist.ts';

/** A joint of a base under a level push, whichever way and whether joints are soft or firm is worse. */
export interface WorkingJoint {
  readonly spot: FrameSpot;
  readonly tenon: Tenon;
  /** Share of its strength that 1 N of push takes up. */
  readonly perNewton: number;
  /** Twist about its tenons, N mm for 1 N of push. */
  readonly twist: number;
  /** Share of its shear strength at which a bare tenon would take that twist, for 1 N of push. */
  readonly bareTwist: number;
}

export type JointWork =
  | { readonly joints: readonly WorkingJoint[]; readonly needs?: never }
  | { readonly needs: string; readonly joints?: never };

/** What all loose-tenon joints of a base do under a level push of 1 N: all that they feel grows with the push. */
export function jointWork(assembly: Assembly): JointWork {
  const soft = pushedBase(assembly, 1, GLUED_GRIP.value.low);
  const firm = pushedBase(assembly, 1, GLUED_GRIP.value.high);
  if (soft.kind === 'unknown') return { needs: soft.needs };
  if (soft.kind !== 'solved' || firm.kind !== 'solved') return { needs: 'a base that stands' };
  const { spots } = soft.base;
  const woods = new Set(spots.flatMap(({ butting, mate }) => [butting.part.wood, mate.part.wood]));
  const lacking = [...woods]
    .map(speciesById)
    .flatMap((wood) => missing(wood, ['shear', 'mor']).map((field) => `${FIELD_LABELS[field]} of ${wood.name}`));
  if (lacking.length > 0) return { needs: lacking.join(' and ') };
  const cases = [soft, firm].flatMap((pushed) => WAYS.map((way) => pushed.cases[way]));
  return {
    joints: spots.map((spot) =>
      working(
        spot,
        tenonOf(assembly, spot),
        cases.map(({ ends }) => ends.get(spot.member)![spot.end]),
      ),
    ),
  };
}

interface Fitted extends Tenon {
  readonly ends: Mortise['ends'];
  /** The tenon is wide along z of the butting piece, not along its y: that decides which moment bends it in its plane. */
  readonly wideAlongZ: boolean;
}

/** One of the tenons of a joint; the weaker of the two woods counts. */
function tenonOf(assembly: Assembly, { joint, butting, mate }: FrameSpot): Fitted {
  const woods = [butting, mate].map((b) => speciesById(b.part.wood));
  const side = joint.sides.find((s) => s.part === butting.part.id)!;
  const cut = butting.part.features.find((f): f is Mortise => f.kind === 'mortise' && f.id === side.features[0])!;
  const reach = partOf(assembly, joint.tenons[0]!).finished.length / 2;
  return {
    depths: [reach, reach],
    height: cut.length - cut.play,
    thickness: cut.width,
    shear: Math.min(...woods.map((w) => w.shear!.value)),
    bending: Math.min(...woods.map((w) => w.mor!.value)),
    ends: cut.ends,
    wideAlongZ: Math.abs(dot(turnOut(butting.frame, cut.along), barZ(butting))) > 0.5,
  };
}

function working(spot: FrameSpot, tenon: Fitted, forces: readonly EndForces[]): WorkingJoint {
  const count = spot.joint.tenons.length;
  const share = (f: EndForces): number => {
    const [moment, shear] = tenon.wideAlongZ ? [f.momentY, f.shearZ] : [f.momentZ, f.shearY];
    // Flat cheeks glued over their whole height, as makers do.
    const kind = { loose: true, ends: tenon.ends, flatsGlued: true };
    return jointUse(tenon, kind, moment / count, shear / count).use;
  };
  const twist = Math.max(...forces.map((f) => Math.abs(f.twist)));
  return {
    spot,
    tenon,
    perNewton: Math.max(...forces.map(share)),
    twist,
    bareTwist: twistShear(twist / count, tenon.height, tenon.thickness) / tenon.shear,
  };
}
