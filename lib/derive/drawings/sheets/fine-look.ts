import type { LengthLook } from '../../../drawing/style.ts';

/** Finished sizes are read to 1/64 in or 0.1 mm, as in the cut list (common practice, no source). */
export const FINE_LOOK: { readonly [L in LengthLook['system']]: LengthLook } = {
  in: { system: 'in', denominator: 64, rounding: 'nearest' },
  both: { system: 'both', denominator: 64, rounding: 'nearest', decimals: 1 },
  mm: { system: 'mm', decimals: 1 },
};
