import { type Deg, degrees, radians } from '../../../units/mm.ts';

export interface WedgeAngleOptions {
  /** Slope of the underside. */
  readonly angle: Deg;
  /** Change per length and percent of moisture, through the thickness and over the width. */
  readonly thick: number;
  readonly wide: number;
  /** Percent, positive when it gets damper. */
  readonly moistureChange: number;
}

/** Change of the slope of a wedge, degrees: tan φ' = tan φ (1 + C_thick ΔM)/(1 + C_wide ΔM). */
export function wedgeAngleChange({ angle, thick, wide, moistureChange }: WedgeAngleOptions): Deg {
  const slope = Math.tan(radians(angle));
  const after = (slope * (1 + thick * moistureChange)) / (1 + wide * moistureChange);
  return degrees(Math.atan(after)) - angle;
}

/** The same for small changes: sin φ cos φ (C_thick - C_wide) ΔM. */
export function wedgeAngleChangeSmall({ angle, thick, wide, moistureChange }: WedgeAngleOptions): Deg {
  const phi = radians(angle);
  return degrees(Math.sin(phi) * Math.cos(phi) * (thick - wide) * moistureChange);
}
