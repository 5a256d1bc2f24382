import { IssuesError } from '../params/issues-error.ts';
import { type Outcome, readSources } from '../params/read-values.ts';
import type { Fields, Spec, ValuesOf } from '../params/spec.ts';

/** Values that a file of the maker gives once and for all, whatever they are; no option of the command line changes them. */
export function readOwn<F extends Fields>(spec: Spec<F>, given: unknown, from: string): Outcome<F> {
  const { values, issues } = readSources(spec, [{ values: given, from }]);
  return issues ? { issues: issues.map((issue) => ({ ...issue, via: 'file' })) } : { values };
}

/** The values. @throws IssuesError with all that is wrong. */
export function valuesOrThrow<F extends Fields>({ values, issues }: Outcome<F>, what: string): ValuesOf<F> {
  if (issues) throw new IssuesError(what, issues);
  return values;
}
