import { toInner, turnIn } from '../geometry/frame.ts';
import { add, scale, type Vec3 } from '../geometry/vec.ts';
import type { PlacedPart } from '../model/assembly.ts';
import type { Fixed } from '../model/composition.ts';
import type { Feature } from '../model/feature.ts';
import type { Fixing, Screw } from '../model/joint.ts';
import type { Mm } from '../units/mm.ts';

export interface ScrewFixingOptions {
  readonly id: string;
  /** The part the head bears on, and the part the thread holds in. */
  readonly base: PlacedPart;
  readonly into: PlacedPart;
  /** Where the screw goes into the base, mm in the table's frame, and its unit direction. */
  readonly at: Vec3;
  readonly direction: Vec3;
  /** mm of base along the screw. */
  readonly through: Mm;
  readonly screw: Screw;
  readonly washer: Mm;
  readonly pilot: Mm;
  /** mm of thread wanted; less when the screw is too short for it. */
  readonly penetration: Mm;
  readonly fromCenter: Mm;
  /** How far the wood moves on either side, and along which direction of the table; absent for a screw that stays put. */
  readonly travel?: { readonly outward: Mm; readonly inward: Mm; readonly margin: Mm; readonly along: Vec3 };
  /** Name of the cuts: "fixing-2". */
  readonly cut: string;
}

/** Clearance of a hole over the shank that is not a slot, mm: common practice, no source. */
const CLEARANCE = 0.4;

/** Extra that a sunk washer needs around it, mm: common practice, no source. */
const WASHER_ROOM = 1;

/**
 * A screw with a washer, sunk into the base so far that the thread reaches the wanted depth, through a round hole or a
 * slot, into a pilot hole. A slot lies off the screw so that both ends of the moisture range are reached.
 *
 *     into  ┆ ║ ┆    pilot, as deep as the thread reaches
 *     ──────┴─╫─┴────
 *     base   ┆║┆     hole or slot
 *          ┌─┘▔└─┐   washer
 *          │     │   counterbore, as deep as the screw is short
 *
 * Slot length = shank + outward + inward + margin (Wood Handbook FPL-GTR-282 eq. 13-2 gives the travel).
 */
export function screwFixing(options: ScrewFixingOptions): Fixed {
  const { id, base, into, at, direction, through, screw, washer, travel, cut } = options;
  const sink = Math.max(0, through + options.penetration - screw.length);
  const penetration = screw.length - (through - sink);
  if (!(penetration > 0))
    throw new RangeError(`fixing ${id}: a screw ${screw.length} mm long does not reach through ${through} mm`);
  const shift = travel ? (travel.outward - travel.inward) / 2 : 0;
  const slide = travel ? travel.outward + travel.inward + travel.margin : 0;
  const mouth = travel ? add(at, scale(travel.along, shift)) : at;
  const hole = (
    point: Vec3,
    width: Mm,
    depth: Mm | 'through',
    purpose: 'clearance' | 'counterbore',
    name: string,
  ): Feature => {
    const where = { id: name, at: toInner(base.frame, point), into: turnIn(base.frame, direction), depth, purpose };
    return travel
      ? { kind: 'slottedHole', ...where, along: turnIn(base.frame, travel.along), width, length: width + slide }
      : { kind: 'bore', ...where, diameter: width };
  };
  const shank = travel ? screw.shank : screw.shank + CLEARANCE;
  const features: Feature[] = [];
  if (sink > 0) features.push(hole(mouth, washer + WASHER_ROOM, sink, 'counterbore', `${cut}-counterbore`));
  features.push(hole(add(mouth, scale(direction, sink)), shank, 'through', 'clearance', cut));
  const pilot: Feature = {
    kind: 'bore',
    id: cut,
    at: toInner(into.frame, add(at, scale(direction, through))),
    into: turnIn(into.frame, direction),
    diameter: options.pilot,
    depth: penetration,
    purpose: 'pilot',
  };
  const fixing: Fixing = {
    id,
    base: base.part.id,
    baseFeature: cut,
    into: into.part.id,
    pilotFeature: cut,
    hold: travel ? 'slotted' : 'fixed',
    fromCenter: options.fromCenter,
    screw,
    washer,
    penetration,
    travel: travel ? travel.outward + travel.inward : 0,
  };
  return {
    fixing,
    cuts: new Map([
      [base.part.id, features],
      [into.part.id, [pilot]],
    ]),
  };
}
