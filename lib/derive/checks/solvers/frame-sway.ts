import type { Mm } from '../../../units/mm.ts';
import { positive } from '../../../wood/in-range.ts';
import { type Figure, ours } from './ours.ts';

/** Sway under a level push of 300 N, judged at the lower joint stiffness, mm: up to the first solid, above the second wobbly. */
export const SWAY_LIMITS: Figure<{ readonly solid: Mm; readonly some: Mm }> = ours(
  { solid: 3, some: 8 },
  'our convention; no published value found',
);

/** Level push at the top, N, each way and often. */
export const LEVEL_PUSH: Figure = {
  value: 300,
  status: 'read',
  source: 'Smardzewski, Furniture Design (2015), doi 10.1007/978-3-319-19533-9: 300 to 400 N level',
};

/**
 * Swings a second of a top on its base, Hz: √(K/m)/2π. For information only.
 *
 * @param stiffness N/mm, level, of the base.
 * @param mass kg that swings.
 */
export function swayFrequency(stiffness: number, mass: number): number {
  return Math.sqrt((1000 * positive('stiffness', stiffness, ' N/mm')) / positive('mass', mass, ' kg')) / (2 * Math.PI);
}
