import { turnOut } from '../../geometry/frame.ts';
import { dot, type Vec3 } from '../../geometry/vec.ts';
import { type Assembly, partOf, placeOf } from '../../model/assembly.ts';
import type { Mortise } from '../../model/feature.ts';
import type { Finding } from '../../model/finding.ts';
import type { Joint, JointSide } from '../../model/joint.ts';
import type { Part } from '../../model/part.ts';
import type { Mm } from '../../units/mm.ts';
import { blankOf } from '../solids/solid-of.ts';
import { type CheckContext, called, fromMemory, say, sayMove } from './check.ts';
import { shoulderGap } from './solvers/width-change.ts';
import { moistureOf, movementAssumptions, swelling } from './swelling.ts';

interface Shoulder {
  readonly joint: Joint;
  /** The piece that shrinks away, and the one whose shoulder it leaves. */
  readonly mate: Part;
  readonly butting: Part;
  /** mm of the mate along the tenon, across its grain. */
  readonly width: Mm;
}

/** Directions closer to parallel than this count as one (cosine). */
const PARALLEL = 0.5;

/** The widest gap that drying opens between the shoulders of rails and stretchers and what they butt against. */
export function shoulderGaps(context: CheckContext): Finding[] {
  const { assembly } = context;
  const shoulders = assembly.joints.filter((j) => j.kind === 'frame').flatMap((j) => shouldersOf(assembly, j));
  if (shoulders.length === 0) return [];
  const { fitting, low } = moistureOf(assembly.climate);
  const gap = ({ mate, width }: Shoulder): Mm =>
    shoulderGap(width, swelling(mate.wood, 'flat').perPercent, fitting - low);
  const worst = shoulders.reduce((a, b) => (gap(b) > gap(a) ? b : a));
  const value = gap(worst);
  const { mate, butting, width } = worst;
  return [
    {
      check: 'seasons',
      verdict: 'ok',
      part: mate.id,
      where: worst.joint.id,
      value,
      unit: 'mm',
      because: `${called(mate)}: ${say(context, width)} across its grain, in a dry winter (${low} %) it draws back ${sayMove(context, value)} from the shoulder of ${called(butting)}; none of the ${shoulders.length} shoulders opens more`,
      fixes: [],
      source: 'FPL-GTR-190 Eq 13-2 over half the width',
      assumptions: ['the middle of the piece stays put', ...movementAssumptions({ ...assembly.climate, sawn: 'flat' })],
      unconfirmed: fromMemory(mate.wood, swelling(mate.wood, 'flat').fields),
    },
  ];
}

function shouldersOf(assembly: Assembly, joint: Joint): Shoulder[] {
  const [first, second] = joint.sides;
  return [
    [first, second],
    [second, first],
  ].flatMap(([mateSide, buttingSide]) => {
    const mate = partOf(assembly, mateSide!.part);
    const into = mortiseOf(mate, mateSide!)?.into;
    // A tenon that goes in along the grain stands in an end: that piece butts, the other one shrinks away.
    if (!into || Math.abs(into[0]) > PARALLEL || isUpright(assembly, mate, into)) return [];
    const along = blankOf(mate).vertices.map((p) => dot(p, into));
    const width = Math.max(...along) - Math.min(...along);
    return [{ joint, mate, butting: partOf(assembly, buttingSide!.part), width }];
  });
}

/** Where one piece stands on the other its weight closes the gap. */
const isUpright = (assembly: Assembly, part: Part, into: Vec3): boolean =>
  Math.abs(turnOut(placeOf(assembly, part.id), into)[2]) > PARALLEL;

const mortiseOf = (part: Part, side: JointSide): Mortise | undefined =>
  part.features.find((f): f is Mortise => f.kind === 'mortise' && f.id === side.features[0]);
