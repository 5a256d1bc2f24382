import type { UnitSystem } from '../units/format-length.ts';
import type { Known } from './apply-rules.ts';
import { type Override, parseAssignment } from './assignment.ts';
import { strayOverride } from './collect.ts';
import { exampleRange } from './example-range.ts';
import type { Issue } from './issue.ts';
import { readVariation } from './read-variation.ts';
import type { Fields, Spec, ValuesOf } from './spec.ts';
import { flattenValues } from './values.ts';
import { MOST_TRIALS, MOST_VARIED, type Variation } from './variation.ts';

export type VariationsOutcome =
  | { readonly variations: readonly Variation[]; readonly issues?: never }
  | { readonly issues: readonly Issue[]; readonly variations?: never };

/** What is to be tried, from `path=from..to:count` and `path=one,other` as typed; or all that is wrong with it. */
export function readVariations<F extends Fields>(
  spec: Spec<F>,
  values: ValuesOf<F>,
  given: readonly string[],
  units: UnitSystem,
): VariationsOutcome {
  const known: Known = new Map([...flattenValues(spec, values)].map(([path, value]) => [path, { value, unit: units }]));
  const example = (path: string): string | undefined => exampleRange(spec, known, path, units);
  const issues: Issue[] = [];
  const variations: Variation[] = [];
  const overrides: Override[] = [];
  for (const argument of given) {
    const { override, issue } = parseAssignment(argument, '--vary');
    if (issue) {
      const path = argument.trim();
      issues.push(spec.table.has(path) ? { ...issue, path, try: example(path) } : issue);
      continue;
    }
    overrides.push(override);
    const param = spec.table.get(override.path);
    const read = param
      ? readVariation(param, override, example(override.path))
      : { issues: [{ ...strayOverride(spec, override), via: '--vary' as const }] };
    issues.push(...(read.issues ?? []));
    if ('variation' in read && read.variation) variations.push(read.variation);
  }
  issues.push(...together(overrides, variations));
  return issues.length > 0 ? { issues } : { variations };
}

/** What is wrong with several of them beside each other. */
function together(overrides: readonly Override[], variations: readonly Variation[]): Issue[] {
  const common = { code: 'cannot-vary', given: '', unit: '', via: '--vary' } as const;
  const twice = overrides.find(({ path }, k) => overrides.findIndex((one) => one.path === path) < k);
  if (twice) {
    return [{ ...common, path: twice.path, from: twice.from, because: 'it is given twice; one range is enough' }];
  }
  const extra = overrides[MOST_VARIED];
  if (extra) {
    const because = `one parameter or two can be tried at a time; this is the ${ordinal(MOST_VARIED + 1)}`;
    return [{ ...common, path: extra.path, from: extra.from, because }];
  }
  const trials = variations.reduce((product, { values }) => product * values.length, 1);
  const last = overrides.at(-1);
  if (!last || trials <= MOST_TRIALS) return [];
  const because = `with the other it makes ${trials} pieces to try; up to ${MOST_TRIALS} can be waited for`;
  return [{ ...common, path: last.path, from: last.from, because }];
}

const ordinal = (place: number): string => (place === 3 ? 'third' : `number ${place}`);
