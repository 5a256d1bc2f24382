import { readValues } from '../params/read-values.ts';
import { renderIssues } from '../params/render-issue.ts';
import type { Fields, GivenFields, Spec, ValuesOf } from '../params/spec.ts';

/** Values that a file of the maker gives once and for all. @throws RangeError naming all that is wrong. */
export function readOwn<F extends Fields>(spec: Spec<F>, given: GivenFields<F>, what: string): ValuesOf<F> {
  const { values, issues } = readValues(spec, given);
  if (issues) throw new RangeError(`${what} cannot be read\n${renderIssues(issues, 'in')}`);
  return values;
}
