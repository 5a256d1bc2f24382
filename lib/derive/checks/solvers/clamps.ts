import type { Mm } from '../../../units/mm.ts';
import { positive } from '../../../wood/in-range.ts';
import { type Figure, ours } from './ours.ts';

/** Pressure on a glue joint, MPa: handbook range from light to dense woods. */
export const HANDBOOK_PRESSURE: Figure<{ readonly light: number; readonly dense: number }> = {
  value: { light: 0.69, dense: 1.7 },
  status: 'read',
  source: 'FPL-GTR-190 (second-hand); less on small, well-planed faces',
};

/** Pressure to count with, MPa; makers of adhesives print 1.2 to 1.7 (175 to 250 psi) for hardwood. */
export const USUAL_PRESSURE: Figure = ours(1.2, 'our convention, lower end of what makers of adhesives print');

/** Jaws on sloping edges slide when the tangent of their tilt is above this: in doubt from the first, surely at the second. */
export const JAW_GRIP: Figure<{ readonly doubt: number; readonly slides: number }> = ours(
  { doubt: 0.1, slides: 0.2 },
  'our convention',
);

export interface ClampForceOptions {
  /** MPa. */
  readonly pressure: number;
  readonly length: Mm;
  /** Of the deepest joint. */
  readonly depth: Mm;
  /** N that one clamp gives. */
  readonly clampForce: number;
}

/** Clamps that a pressure asks for. */
export interface ClampsByForce {
  /** N on the joint. */
  readonly force: number;
  readonly clamps: number;
}

export function clampsByForce({ pressure, length, depth, clampForce }: ClampForceOptions): ClampsByForce {
  const force = positive('pressure', pressure, ' MPa') * length * positive('depth', depth, ' mm');
  return { force, clamps: Math.ceil(force / positive('clamp force', clampForce, ' N') - 1e-9) };
}

export interface ClampCoverOptions {
  readonly length: Mm;
  /** Width of the outer stave. */
  readonly stave: Mm;
  /** Depth of the caul between clamp and stave, across the top. */
  readonly caul: Mm;
}

/** Clamps that leave no gap between the cones of pressure. */
export interface ClampsByCover {
  /** Greatest distance between clamps. */
  readonly spacing: Mm;
  readonly clamps: number;
}

/** Pressure spreads at 45° (Rabiej, Fine Woodworking): spacing 2 (stave + caul), one clamp more than spaces. */
export function clampsByCover({ length, stave, caul }: ClampCoverOptions): ClampsByCover {
  const spacing = 2 * positive('stave and caul', stave + caul, ' mm');
  return { spacing, clamps: Math.ceil(positive('length', length, ' mm') / spacing - 1e-9) + 1 };
}
