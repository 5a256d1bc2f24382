import { FIELD_LABELS } from '../../wood/field-labels.ts';
import type { Species } from '../../wood/species.ts';
import { SHEAR_MODULUS_FALLBACK } from '../../wood/stiffness.ts';

/** A shear modulus of a wood over its E_L, and in words what was taken for it when it is not printed. */
export interface ShearRatio {
  readonly value: number;
  readonly assumptions: readonly string[];
}

export function shearRatio(wood: Species, field: 'gltOverEl' | 'glrOverEl'): ShearRatio {
  const printed = wood[field];
  if (printed) return { value: printed.value, assumptions: [] };
  return {
    value: SHEAR_MODULUS_FALLBACK.value,
    assumptions: [`${FIELD_LABELS[field]} of ${wood.name} is not printed: one sixteenth is taken`],
  };
}
