/** Moisture in percent at which shrinking begins: 30 where unknown (FPL-GTR-282 Eq 4-9, read in a public copy). */
export const FIBER_SATURATION = 30;
