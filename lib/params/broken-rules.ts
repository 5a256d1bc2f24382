import type { UnitSystem } from '../units/format-length.ts';
import { applyRules, type Complaint } from './apply-rules.ts';
import type { Fields, Spec, ValuesOf } from './spec.ts';
import { flattenValues } from './values.ts';

/** What the rules have against whole values, for code that changes values of its own accord; lengths are said in `units`. */
export function brokenRules<F extends Fields>(
  spec: Spec<F>,
  values: ValuesOf<F>,
  units: UnitSystem = 'mm',
): readonly Complaint[] {
  const known = new Map(
    [...flattenValues(spec, values)].map(([path, value]) => [path as string, { value, unit: units }]),
  );
  return applyRules(spec, known);
}
