import type { Mm } from '../../../units/mm.ts';
import { type Figure, ours } from './ours.ts';

/** Within which sizes such joints have been tested, mm. */
export const TESTED_RANGE: Figure<{ readonly [K in 'depth' | 'height']: readonly [low: Mm, high: Mm] }> = {
  value: { depth: [15, 50], height: [20, 50] },
  status: 'read',
  source: 'Derikvand et al.; Kasal et al. (abstracts)',
};

/** Greatest glued height across the grain of a post, mm: more wood than this moves too far against a long-grain tenon. */
export const MOST_ACROSS_GRAIN: Figure<Mm> = ours(75, 'our convention; common practice, no source');

/** Least shoulder below a tenon, mm. */
export const LEAST_LOWER_SHOULDER: Figure<Mm> = ours(
  5,
  'our convention; that it matters: Derikvand et al., Kasal et al. (abstracts)',
);

export interface TenonPlace {
  readonly depths: readonly Mm[];
  readonly height: Mm;
  /** Whether the glued height lies across the grain of the mortised part. */
  readonly acrossGrain: boolean;
  /** Of the rail, below the tenon. */
  readonly lowerShoulder?: Mm;
}

/** A size outside what is known. */
export interface JointWarning {
  readonly about: 'depth' | 'height' | 'across the grain' | 'lower shoulder';
  readonly value: Mm;
  /** mm; absent where there is no such limit. */
  readonly low?: Mm;
  readonly high?: Mm;
  readonly source: string;
}

/** What is to be said of the sizes of a tenon before its figures are believed; empty when all lie within. */
export function jointWarnings({ depths, height, acrossGrain, lowerShoulder }: TenonPlace): JointWarning[] {
  const { value, source } = TESTED_RANGE;
  const found: JointWarning[] = [];
  for (const depth of new Set(depths)) found.push(...outside('depth', depth, value.depth, source));
  found.push(...outside('height', height, value.height, source));
  if (acrossGrain && height > MOST_ACROSS_GRAIN.value) {
    const { value: high, source: why } = MOST_ACROSS_GRAIN;
    found.push({ about: 'across the grain', value: height, high, source: why });
  }
  if (lowerShoulder !== undefined && lowerShoulder < LEAST_LOWER_SHOULDER.value) {
    const { value: low, source: why } = LEAST_LOWER_SHOULDER;
    found.push({ about: 'lower shoulder', value: lowerShoulder, low, source: why });
  }
  return found;
}

function outside(
  about: JointWarning['about'],
  value: Mm,
  [low, high]: readonly [Mm, Mm],
  source: string,
): JointWarning[] {
  return value < low || value > high ? [{ about, value, low, high, source }] : [];
}
