import type { Mm } from '../../../units/mm.ts';
import { positive } from '../../../wood/in-range.ts';

/**
 * The part of a top that sticks out across the grain beyond a bearer, as a tapered strip clamped at the bearer.
 *
 * ```
 *        ┌──────────────┤
 *    tip │              │ root        x from the tip to the root
 *        └────___       │
 *                ───────┤
 *        ├─── reach ────┤
 * ```
 *
 * An explanation and a check by hand: a clamped root flatters, the plate has the verdict.
 */
export interface Wing {
  readonly reach: Mm;
  readonly breadth: Mm;
  /** Thickness at the tip and at the root. */
  readonly tip: Mm;
  readonly root: Mm;
  /** MPa across the grain. */
  readonly e: number;
}

/** What presses on a wing, downward positive. */
export type WingLoad =
  | { readonly kind: 'tip' /** N. */; readonly force: number }
  | { readonly kind: 'even' /** N/mm. */; readonly perLength: number }
  | { readonly kind: 'own weight' /** N/mm³. */; readonly perVolume: number };

/** Moment in N mm at a distance from the tip, pulling the upper side. */
export function wingMoment({ reach, breadth, tip, root }: Wing, load: WingLoad, x: Mm): number {
  switch (load.kind) {
    case 'tip':
      return load.force * x;
    case 'even':
      return (load.perLength * x * x) / 2;
    case 'own weight':
      return load.perVolume * breadth * x * x * (tip / 2 + ((root - tip) * x) / (6 * reach));
  }
}

export const wingThickness = ({ reach, tip, root }: Wing, x: Mm): Mm => tip + ((root - tip) * x) / reach;

/** @throws RangeError when a size or the modulus is not positive. */
export function soundWing(wing: Wing): Wing {
  positive('reach', wing.reach, ' mm');
  positive('breadth', wing.breadth, ' mm');
  positive('thickness at the tip', wing.tip, ' mm');
  positive('thickness at the root', wing.root, ' mm');
  positive('E across', wing.e, ' MPa');
  return wing;
}
