import { read, type Sourced } from './sourced.ts';

/** Bending modulus free of shear over the printed one: use it only where shear deflection is added by its own term. */
export const SHEAR_FREE_FACTOR: Sourced<number> = read(1.1, 'FPL-GTR-282 table 5-3, footnote c (public copy)');

/** Shear modulus over E_L for a wood whose elastic ratios are not printed. */
export const SHEAR_MODULUS_FALLBACK: Sourced<number> = read(1 / 16, 'FPL-GTR-282 (public copy)');
