import type { Mm } from '../units/mm.ts';
import type { PartId } from './part.ts';

/** One half of a joint: a part and the mortises in it that belong here, in the same order on both sides. */
export interface JointSide {
  readonly part: PartId;
  readonly features: readonly string[];
}

/** Two parts glued together, with or without loose tenons between them. */
export interface Joint {
  /** "top/joint-3", "frame-a/post-1-foot". */
  readonly id: string;
  readonly kind: 'edge' | 'layer' | 'frame' | 'pad';
  readonly sides: readonly [JointSide, JointSide];
  /** The tenons of the joint, in the order of the features. */
  readonly tenons: readonly PartId[];
  /** mm², the two faces that meet, mortises not subtracted. */
  readonly glueArea: number;
}

/** How a screw may travel: held, or free along the slot. */
export interface Fixing {
  /** "frame-a/fixing-2". */
  readonly id: string;
  /** The part the screw head bears on, and the feature it passes through. */
  readonly base: PartId;
  readonly baseFeature: string;
  /** The part the thread holds in, and its pilot hole. */
  readonly into: PartId;
  readonly pilotFeature: string;
  readonly hold: 'fixed' | 'slotted';
  /** mm, distance of the screw from the line that stays put, across the grain. */
  readonly fromCenter: Mm;
  readonly screw: Screw;
  /** mm, diameter of the washer under its head. */
  readonly washer: Mm;
  /** mm of thread in the wood. */
  readonly penetration: Mm;
  /** mm that the slot lets the wood travel, shank and margin not counted; 0 for a fixed screw. */
  readonly travel: Mm;
}

export interface Screw {
  /** Number of the gauge, as screws are sold: 10. */
  readonly gauge: number;
  /** mm. */
  readonly shank: Mm;
  readonly length: Mm;
}
