import { type Figure, ours } from './ours.ts';

/** A loose tenon over one worked on the rail. */
export const LOOSE_TENON: Figure = ours(
  0.75,
  'our convention, on this ground: loose tenons lie between dowels and tenons worked on (Aman, West and Cormier 2008); beech dowel joints hold 154 and tenon joints 204 N m (Uysal 2024, sizes not read)',
);

/** A tenon with round ends over a square one. */
export const ROUND_ENDS: Figure = {
  value: 0.87,
  status: 'read',
  source: 'Tankut and Tankut, Turkish Journal of Agriculture and Forestry',
};

export interface TenonKind {
  readonly loose: boolean;
  readonly ends: 'round' | 'square';
  /** Whether the flat cheeks are glued over their whole height. */
  readonly flatsGlued: boolean;
}

/**
 * What is left of the strength of a square tenon worked on the rail. Of a loose tenon with round ends only the first
 * factor counts, unless its flats are not glued (our convention).
 */
export function tenonFactor({ loose, ends, flatsGlued }: TenonKind): number {
  const round = ends === 'round' ? ROUND_ENDS.value : 1;
  if (!loose) return round;
  return LOOSE_TENON.value * (flatsGlued ? 1 : round);
}
