import type { LengthLook } from '../../../../drawing/style.ts';

/** Both systems where taper matters: there they get mixed up. */
export const taperLook = (look: LengthLook): LengthLook =>
  look.system === 'in' ? { system: 'both', denominator: look.denominator, rounding: look.rounding, decimals: 1 } : look;
