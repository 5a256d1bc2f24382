import { steps, type UnitSystem } from '../units/format-length.ts';
import type { Mm } from '../units/mm.ts';

/** mm, what rough sizes go up to, and places on a board are marked to: 1/16 in, or 1 mm (our convention). */
export const ROUGH_STEP: { readonly [U in UnitSystem]: Mm } = { in: 25.4 / 16, mm: 1 };

/** A rough size as it is cut, whatever paper tells it, in the units of the design: up to the next step. */
export const roughSize = (mm: Mm, units: UnitSystem): Mm => steps(mm, ROUGH_STEP[units], 'up') * ROUGH_STEP[units];
