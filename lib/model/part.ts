import type { Mm } from '../units/mm.ts';
import type { SpeciesId } from '../wood/species-id.ts';
import type { Body } from './body.ts';
import type { Feature } from './feature.ts';

/** "frame-a/bearer": stable, unique in an assembly; parts are sorted by it. Lower case, digits, "-" and "/". */
export type PartId = string;

/** What a part is in the trade; a closed list, because papers group and word things by it. */
export type PartKind =
  | 'top'
  | 'strip'
  | 'post'
  | 'panelLeg'
  | 'stave'
  | 'bearer'
  | 'cleat'
  | 'foot'
  | 'rail'
  | 'stretcher'
  | 'seat'
  | 'side'
  | 'looseTenon'
  | 'pad';

/** Sizes in the order of a cut list; length follows the grain. */
export interface Size {
  readonly thickness: Mm;
  readonly width: Mm;
  readonly length: Mm;
}

/** What to add to a finished size so that a piece can be milled to it, mm. */
export type Allowance = Size;

/**
 * What a design says of a piece of wood, in the piece's own frame: x along the grain from the reference end, y across
 * from the reference edge (top and strips: from the center line), z from the reference face into the wood (top and
 * strips: the show face, so they are turned over when placed).
 */
export interface Part {
  readonly id: PartId;
  /** "B1": unique a piece, pencilled on the wood. */
  readonly mark: string;
  /** "bearer": what it is called; pieces of one shape share it, mark and id tell them apart. */
  readonly name: string;
  readonly kind: PartKind;
  readonly wood: SpeciesId;
  readonly finished: Size;
  /** What the piece is milled to before it is cut, tapered or scribed to its final shape. */
  readonly rough: Size;
  readonly body: Body;
  /** In the order of making. */
  readonly features: readonly Feature[];
  /** For a glued panel: the pieces it is made of. They are listed and weighed; the panel is shaped and placed. */
  readonly members?: readonly PartId[];
  /** A word for the cut list: "taper underside after gluing". */
  readonly notes: readonly string[];
}

/** True for a panel that is glued up from other parts of the same assembly. */
export const isGlueUp = (part: Part): part is Part & { readonly members: readonly PartId[] } =>
  part.members !== undefined;
