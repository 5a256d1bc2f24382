import type { Mm } from '../../../../units/mm.ts';

/** Without the noise of subtraction, mm: a length is lettered alike wherever it comes from. */
export const exact = (mm: Mm): Mm => Math.round(mm * 1e6) / 1e6;
