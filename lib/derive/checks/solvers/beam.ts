import type { Mm } from '../../../units/mm.ts';

/**
 * A beam on two supports, with or without overhangs, of one section from end to end.
 *
 * ```
 *   0                                length
 *   ════════════════════════════════════► x
 *        ▲                    ▲
 *     supports[0]         supports[1]
 * ```
 *
 * Handled: supports that hold both up and down. Not handled: a section that changes, shear bending.
 */
export interface Beam {
  readonly length: Mm;
  /** mm from the end, the nearer one first. */
  readonly supports: readonly [Mm, Mm];
  /** MPa along the grain. */
  readonly e: number;
  /** mm⁴. */
  readonly inertia: number;
}

/** What presses on a beam, downward positive. */
export type BeamLoad =
  | { readonly kind: 'point' /** mm from the end. */; readonly at: Mm /** N. */; readonly force: number }
  | {
      readonly kind: 'even';
      /** mm from the end; the whole beam when absent. */
      readonly from?: Mm;
      readonly to?: Mm;
      /** N/mm. */
      readonly perLength: number;
    };

/** Loads that act together. */
export interface BeamCase {
  readonly name: string;
  readonly loads: readonly BeamLoad[];
}
