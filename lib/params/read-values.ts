import type { Override } from './assignment.ts';
import { collect, type Source } from './collect.ts';
import { completeFault } from './complete-fault.ts';
import { defaultText } from './format-value.ts';
import type { Issue } from './issue.ts';
import type { Value } from './param.ts';
import { readParam } from './read-param.ts';
import type { Fault } from './reading.ts';
import { DEFAULT, type Input, ruleIssues } from './rule-issues.ts';
import type { Fields, GivenFields, Spec, ValuesOf } from './spec.ts';
import { nestValues } from './values.ts';

/** Every value, frozen; or everything that is wrong. */
export type Outcome<F extends Fields> =
  | { readonly values: ValuesOf<F>; readonly issues?: never }
  | { readonly issues: readonly Issue[]; readonly values?: never };

/** The values of a spec from what a design file gives and what the command line overrides. */
export function readValues<F extends Fields>(
  spec: Spec<F>,
  given: GivenFields<F> = {},
  overrides: readonly Override[] = [],
): Outcome<F> {
  return readSources(spec, [{ values: given, from: 'the design file' }], overrides);
}

/**
 * The same from any number of sources whose values may be anything at all. A later source wins over an earlier one, an
 * override over all. What is not given, or `undefined`, takes its default. Issues come all at once, in the order of
 * the parameter table, unknown names last; a value that was replaced by a later one is not read.
 */
export function readSources<F extends Fields>(
  spec: Spec<F>,
  sources: readonly Source[],
  overrides: readonly Override[] = [],
): Outcome<F> {
  const { entries, issues, spoiled } = collect(spec, sources, overrides);
  const known = new Map<string, Input>();
  const faults: { readonly path: string; readonly from: string; readonly fault: Fault }[] = [];
  for (const [path, param] of spec.table) {
    if (isUnder(spoiled, path)) continue;
    const { raw, from } = entries.get(path) ?? { raw: defaultText(param), from: DEFAULT };
    const reading = readParam(param, raw);
    if (reading.faults) faults.push(...reading.faults.map((fault) => ({ path, from, fault })));
    else known.set(path, { ...reading, from });
  }
  issues.push(...faults.map(({ path, from, fault }) => completeFault({ spec, known, path, from }, fault)));
  issues.push(...ruleIssues(spec, known));
  if (issues.length > 0) return { issues: Object.freeze(inOrder(spec, issues)) };
  const values = new Map<string, Value>([...known].map(([path, { value }]) => [path, value]));
  return { values: nestValues(spec.fields, values) };
}

function isUnder(spoiled: ReadonlySet<string>, path: string): boolean {
  return [...spoiled].some((at) => at === '' || at === path || path.startsWith(`${at}.`));
}

function inOrder(spec: Spec, issues: readonly Issue[]): Issue[] {
  const paths = [...spec.table.keys()];
  const rank = ({ code, path }: Issue): number => {
    if (code === 'unknown' || code === 'unknown-group') return paths.length;
    return paths.findIndex((known) => known === path || path === '' || known.startsWith(`${path}.`));
  };
  return issues.toSorted((a, b) => rank(a) - rank(b));
}
