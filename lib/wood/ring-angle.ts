import { type Deg, radians } from '../units/mm.ts';
import { inRange } from './in-range.ts';

/**
 * How the growth rings lie to the wide face of a board: flat-sawn 0°, quarter-sawn 90°, or the angle itself in degrees.
 *
 * ```
 *  flat  ‿‿‿‿‿‿   angle  ////////   quarter  ||||||||
 * ```
 *
 * It speaks of the width; for the thickness of a flat-sawn board ask for `quarter`, and the other way round.
 */
export type Sawn = 'flat' | 'quarter' | { readonly ringAngle: Deg };

/**
 * Share of the tangential value across the width: cos² of the ring angle, the rest is radial. It is how strains turn in
 * a plane, but as a rule for boards it is our convention; the handbook prints only the two ends.
 */
export function tangentialShare(sawn: Sawn): number {
  if (sawn === 'flat') return 1;
  if (sawn === 'quarter') return 0;
  const angle = inRange('ring angle', sawn.ringAngle, 0, 90, '°');
  return angle === 90 ? 0 : Math.cos(radians(angle)) ** 2;
}

/** A value across the width of a board from its radial and tangential values, by the same convention. */
export function acrossGrain(radial: number, tangential: number, sawn: Sawn): number {
  const share = tangentialShare(sawn);
  return share * tangential + (1 - share) * radial;
}
