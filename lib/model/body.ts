import type { Outline } from '../geometry/outline.ts';
import type { Surface } from '../geometry/surface.ts';
import type { Mm } from '../units/mm.ts';
import type { EdgeProfile } from './feature.ts';

/**
 * An outline on the reference face, sawn through to the far face. When the cut is not square to the face, `far` is the
 * outline on the far face: as many points as `outline`, each segment parallel to its partner.
 */
export interface PrismBody {
  readonly kind: 'prism';
  /** mm, x and y of the part's frame, at z = 0. */
  readonly outline: Outline;
  readonly far?: Outline;
  /** mm, along z. */
  readonly thickness: Mm;
}

/** A profile across the grain, the same from the reference end to the far end. */
export interface BarBody {
  readonly kind: 'bar';
  /** mm, outline points (x, y) stand for y and z of the part's frame. */
  readonly profile: Outline;
  /** mm, along x. */
  readonly length: Mm;
}

/**
 * A rectangular panel with a flat show face at z = 0 and a worked underside.
 *
 *        y = -width/2 ┌──────────────────┐  show face, z = 0
 *                     └──────╲____╱──────┘  underside, z = thickness of the surface
 *                          y = 0
 */
export interface PanelBody {
  readonly kind: 'panel';
  /** mm: x from 0 to length, y from -width/2 to width/2. */
  readonly length: Mm;
  readonly width: Mm;
  /** Depth of the underside below the show face over x and y, mm. */
  readonly underside: Surface;
}

/** One strip, or one layer of a strip, of a glued panel; in the frame of the panel. */
export interface SliceBody {
  readonly kind: 'slice';
  readonly of: PanelBody;
  /** Profiles worked on the panel after it is glued. */
  readonly profiles: readonly EdgeProfile[];
  /** mm, from the center line. */
  readonly from: Mm;
  readonly to: Mm;
  /** mm, below the show face; `bottom` absent means down to the underside. */
  readonly top: Mm;
  readonly bottom?: Mm;
}

export type Body = PrismBody | BarBody | PanelBody | SliceBody;
export type BodyKind = Body['kind'];
