import type { Mm } from '../units/mm.ts';
import { positive } from './in-range.ts';

export interface CupOptions {
  /** Width of the board. */
  readonly width: Mm;
  /** From the pith to the face that is judged, square to it. */
  readonly pithDistance: Mm;
  /** Change per length across and along the rings, as fractions; negative when drying. */
  readonly radialStrain: number;
  readonly tangentialStrain: number;
}

/**
 * Depth of the cup of a flat-sawn board, mm: positive when the bark side turns hollow, as in drying.
 *
 * ```
 *   bark side  \_______/    depth is measured
 *                  o  pith  in the middle of the face
 * ```
 *
 * Every point keeps its place in the rings: radii grow by 1 + e_R, angles by (1 + e_T) / (1 + e_R). Derived here, no
 * published formula was found. Handled: a free board of one moisture; not handled: weight, glue, one wet side.
 */
export function cup(options: CupOptions): Mm {
  const { radialStrain, tangentialStrain } = options;
  const half = positive('width', options.width, ' mm') / 2;
  const distance = positive('distance from the pith', options.pithDistance, ' mm');
  const turn = (1 + tangentialStrain) / (1 + radialStrain);
  const edge = Math.hypot(half, distance) * Math.cos(turn * Math.atan2(half, distance));
  return (1 + radialStrain) * (edge - distance);
}
