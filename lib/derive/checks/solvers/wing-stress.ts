import type { Mm } from '../../../units/mm.ts';
import { soundWing, type Wing, type WingLoad, wingMoment, wingThickness } from './wing.ts';

/** Where a wing breaks, mm from the tip, and the stress across the grain there, MPa. */
export interface WingPeak {
  readonly at: Mm;
  readonly stress: number;
}

/**
 * The greatest stress 6M/bh². A load at the tip of a wing more than twice as thick at its root breaks it where it is twice
 * as thick as at the tip, x = a h0/(h1 - h0) (derived); everything else breaks at the root.
 */
export function wingPeak(wing: Wing, load: WingLoad): WingPeak {
  const { reach, breadth, tip, root } = soundWing(wing);
  const at = load.kind === 'tip' && root > 2 * tip ? (reach * tip) / (root - tip) : reach;
  return { at, stress: (6 * Math.abs(wingMoment(wing, load, at))) / (breadth * wingThickness(wing, at) ** 2) };
}
