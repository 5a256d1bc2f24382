import { type TenonKind, tenonFactor } from './joint-factors.ts';
import { type Tenon, tenonStrength, tenonStress } from './joint-strength.ts';
import { type Figure, ours } from './ours.ts';

const FATIGUE =
  'our convention, on this ground: dowel T-joints lasted 131,000 cycles at 40 %, 31,600 at 60 % and 4,160 at 80 % of their strength (Zhang et al., dowel fatigue)';

/** Share of its strength at which a joint may work under a push that comes often: up to the first, up to the second. */
export const OFTEN_LIMITS: Figure<{ readonly ok: number; readonly least: number }> = ours(
  { ok: 0.4, least: 0.65 },
  FATIGUE,
);

/** The same for a push of 400 N that comes once. */
export const ONCE_LIMIT: Figure = ours(0.65, FATIGUE);

/** How hard a joint works. */
export interface JointUse {
  /** N mm that it holds without shear, factors in. */
  readonly capacity: number;
  /** Share of its strength in use; 1 is as much as it holds. */
  readonly use: number;
  readonly governs: 'glue' | 'tenon';
}

/** Share of the strength of a tenon that a moment in N mm and a shear force in N along its height take up. */
export function jointUse(tenon: Tenon, kind: TenonKind, moment: number, shearForce = 0): JointUse {
  const factor = tenonFactor(kind);
  const stress = tenonStress(tenon, moment, shearForce);
  const glue = stress.glue / tenon.shear;
  const bent = stress.tenon / tenon.bending;
  return {
    capacity: factor * tenonStrength(tenon).strength,
    use: Math.max(glue, bent) / factor,
    governs: glue >= bent ? 'glue' : 'tenon',
  };
}
