import { speaksInches } from '../params/read-length.ts';
import type { UnitSystem } from '../units/format-length.ts';

/** Of texts to try instead of one without a unit, the one in the units of the design; nobody writes fractions of a millimeter. */
export function tryIn(tries: readonly string[], units: UnitSystem): string | undefined {
  const inches = units === 'in' || tries.some((text) => text.includes('/'));
  return tries.find((text) => speaksInches(text) === inches) ?? tries[0];
}
