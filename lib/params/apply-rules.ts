import { formatLength } from '../units/format-length.ts';
import type { Value } from './param.ts';
import type { Problem, Rule, Say } from './rule.ts';
import type { Fields, Spec } from './spec.ts';

/** A value that was read well, and the unit it came in. */
export interface KnownValue {
  readonly value: Value;
  readonly unit: string;
}

/** A problem, and the fields of the rule that has it. */
export interface Complaint extends Problem {
  readonly fields: readonly string[];
}

/** What was read well, by path. */
export type Known = ReadonlyMap<string, KnownValue>;

/** What the rules have against the values; a rule with a field that is not known does not run. */
export function applyRules(spec: Spec, known: Known, concerning?: string): readonly Complaint[] {
  return spec.rules
    .filter((rule) => concerning === undefined || rule.fields.includes(concerning))
    .filter((rule) => rule.fields.every((path) => known.has(path)))
    .flatMap((rule) => applyRule(spec, rule, known));
}

/** What the rules over one path would have against a value of it. */
export function applyRulesTo(spec: Spec, known: Known, path: string, candidate: KnownValue): readonly Complaint[] {
  return applyRules(spec, new Map([...known, [path, candidate]]), path);
}

function applyRule(spec: Spec, rule: Rule, known: Known): readonly Complaint[] {
  const say = sayIn(rule.fields.map((path) => known.get(path)!.unit));
  const problems: readonly Problem[] = [rule.check(view(spec.fields, rule, known, '') as never, say) ?? []].flat();
  for (const { path } of problems) {
    if (!rule.fields.includes(path)) throw new RangeError(`${describe(rule)} complains about ${path}, not its own`);
  }
  return problems.map((problem) => ({ ...problem, fields: rule.fields }));
}

/**
 * The values of the fields of one rule. Reading any other is a bug in the rule: it would see values that are not checked.
 * Made as they are read, since a rule reads few of many fields.
 */
function view(fields: Fields, rule: Rule, known: Known, prefix: string): object {
  return new Proxy(
    {},
    {
      get(_, name: string) {
        const node = fields[name];
        const path = prefix + name;
        if (!node) return undefined;
        if (node.kind === 'group') return view(node.fields, rule, known, `${path}.`);
        if (rule.fields.includes(path)) return known.get(path)!.value;
        throw new RangeError(`${describe(rule)} reads ${path}, which it does not list`);
      },
    },
  );
}

function sayIn(units: readonly string[]): Say {
  const system = units.find((unit) => unit === 'in' || unit === 'mm') === 'mm' ? 'mm' : 'in';
  return (mm) => formatLength(mm, system);
}

const describe = (rule: Rule): string => `the rule over ${rule.fields.join(', ')}`;
