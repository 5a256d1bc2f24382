import type { Vec3 } from '../geometry/vec.ts';
import type { Deg, Mm } from '../units/mm.ts';

/** What every cut has: its name within the part, where its mouth is, and which way it goes. */
interface Cut {
  /** Unique within the part: "slot-3", "tenon-foot". Printed in findings and drawings. */
  readonly id: string;
  /** Center of the mouth, mm, in the part's own frame. */
  readonly at: Vec3;
  /** Unit direction into the wood, in the part's own frame. */
  readonly into: Vec3;
}

/** A mortise for a loose tenon: one half of the tenon goes in, the glue takes the rest of the depth. */
export interface Mortise extends Cut {
  readonly kind: 'mortise';
  /** Unit direction of its length, square to `into`. */
  readonly along: Vec3;
  /** mm, at the mouth, along `along`; play included. */
  readonly length: Mm;
  /** mm, at the mouth, square to `along`: the thickness of the tenon. */
  readonly width: Mm;
  /** mm, from the mouth to the floor. */
  readonly depth: Mm;
  readonly ends: 'round' | 'square';
  /** mm that the tenon may move along the length, both ends together; 0 on the tight side of a joint. */
  readonly play: Mm;
}

/** A round hole: a pilot for a screw, or a clearance hole. */
export interface Bore extends Cut {
  readonly kind: 'bore';
  readonly diameter: Mm;
  /** mm, or right through to the far side. */
  readonly depth: Mm | 'through';
  readonly purpose: 'pilot' | 'clearance' | 'counterbore';
}

/** A hole stretched along one direction, so that a screw can travel with the wood. */
export interface SlottedHole extends Cut {
  readonly kind: 'slottedHole';
  readonly along: Vec3;
  /** mm over all, along `along`; width is the diameter of the ends. */
  readonly length: Mm;
  readonly width: Mm;
  readonly depth: Mm | 'through';
  readonly purpose: 'clearance' | 'counterbore';
}

/** Which edges of a top a profile runs on: the arris of the show face, or that of the underside. */
export type ProfiledEdge = 'show' | 'underside';

/** All four arrises of one face rounded over. */
export interface RoundOver {
  readonly kind: 'roundOver';
  readonly id: string;
  readonly edge: ProfiledEdge;
  readonly radius: Mm;
}

/** All four arrises of one face chamfered, the same width on both faces. */
export interface Chamfer {
  readonly kind: 'chamfer';
  readonly id: string;
  readonly edge: ProfiledEdge;
  readonly width: Mm;
  readonly angle: Deg;
}

/** What is worked on a part after it is cut to size, a closed list: each product answers for every kind. */
export type Feature = Mortise | Bore | SlottedHole | RoundOver | Chamfer;
export type FeatureKind = Feature['kind'];

/** Features that take a pocket out of the wood. */
export type Pocket = Mortise | Bore | SlottedHole;
/** Features that work an edge. */
export type EdgeProfile = RoundOver | Chamfer;

const POCKETS: { readonly [K in FeatureKind]: boolean } = {
  mortise: true,
  bore: true,
  slottedHole: true,
  roundOver: false,
  chamfer: false,
};

export const isPocket = (feature: Feature): feature is Pocket => POCKETS[feature.kind];
export const isEdgeProfile = (feature: Feature): feature is EdgeProfile => !POCKETS[feature.kind];

/** How far a profile reaches in from the edge and down from the face, mm. */
export const profileSize = (profile: EdgeProfile): Mm =>
  profile.kind === 'roundOver' ? profile.radius : profile.width;
