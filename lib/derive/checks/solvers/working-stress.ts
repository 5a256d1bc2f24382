import { inRange, positive } from '../../../wood/in-range.ts';
import { type Figure, ours } from './ours.ts';

/** A strength of wood that a working stress is made from. */
export type StrengthKind = 'bending' | 'shear' | 'tension across';

/** Coefficients of variation of clear wood. */
export const VARIATION: Figure<{ readonly [K in StrengthKind]: number }> = {
  value: { bending: 0.16, shear: 0.14, 'tension across': 0.25 },
  status: 'memory',
  source: 'FPL-GTR-282 table 5-6',
};

/** Standard deviations from the mean to what 95 of 100 pieces reach: the normal distribution. */
export const ONE_IN_TWENTY = 1.645;

/** Divides what is left, for size, sharp corners and what was not thought of. */
export const RESERVE: Figure = ours(1.3, 'our convention');

/** Factor for how long a load stays. */
export const DURATION: Figure<{ readonly short: number; readonly permanent: number }> = ours(
  { short: 1, permanent: 0.62 },
  'our convention; 10 years on the Madison curve',
);

/** Stress over working stress: up to the first well, up to the second worth another look, above it change. */
export const STRESS_BANDS: Figure<{ readonly ok: number; readonly least: number }> = ours(
  { ok: 0.8, least: 1 },
  'our convention',
);

/** Share of a mean strength that may be used: (1 - 1.645 COV) × duration / 1.3. */
export function workingShare(kind: StrengthKind, duration: keyof typeof DURATION.value): number {
  return ((1 - ONE_IN_TWENTY * VARIATION.value[kind]) * DURATION.value[duration]) / RESERVE.value;
}

/** Working stress in MPa from a mean strength in MPa. */
export function workingStress(mean: number, kind: StrengthKind, duration: keyof typeof DURATION.value): number {
  return positive('strength', mean, ' MPa') * workingShare(kind, duration);
}

/**
 * Part of its short-time strength that wood bears for a time in seconds: 0.183 + 1.084 t^-0.0464, the Madison curve (read
 * in Forests 12(9):1148, 2021). From one second up; short times give more than 1.
 */
export function madisonCurve(seconds: number): number {
  inRange('time', seconds, 1, 1e10, ' s');
  return (18.3 + 108.4 * seconds ** -0.0464) / 100;
}
