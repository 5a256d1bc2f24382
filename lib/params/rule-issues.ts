import { applyRules, type Complaint } from './apply-rules.ts';
import { completeFault, firstAccepted } from './complete-fault.ts';
import { formatValue } from './format-value.ts';
import type { Issue } from './issue.ts';
import type { Good } from './reading.ts';
import type { Spec } from './spec.ts';

/** A value that was read well, and who gave it. */
export interface Input extends Good {
  readonly from: string;
}

export const DEFAULT = 'the default';

/** What the rules have against the values that were read well. Limits on one field make one issue. */
export function ruleIssues(spec: Spec, inputs: ReadonlyMap<string, Input>): readonly Issue[] {
  const issues: Issue[] = [];
  const limited = new Set<string>();
  for (const complaint of applyRules(spec, inputs)) {
    const issue = limitIssue(spec, inputs, complaint);
    if (!issue) issues.push(plainIssue(spec, inputs, complaint));
    else if (!limited.has(complaint.path)) {
      limited.add(complaint.path);
      issues.push(issue);
    }
  }
  return issues;
}

/** The issue of a field outside the limits that other fields set; undefined when there are none it could keep to. */
function limitIssue(spec: Spec, known: ReadonlyMap<string, Input>, complaint: Complaint): Issue | undefined {
  const { path, min, max } = complaint;
  const { value, given, unit } = known.get(path)!;
  if ((min === undefined && max === undefined) || typeof value !== 'number') return undefined;
  const { kind } = spec.table.get(path)!;
  const from = fromOf(known, complaint);
  const fault = { code: 'out-of-range', kind, given, unit, value, tries: [] } as const;
  const issue = completeFault({ spec, known, path, from }, fault);
  return issue.min === undefined ? undefined : issue;
}

function plainIssue(spec: Spec, known: ReadonlyMap<string, Input>, complaint: Complaint): Issue {
  const { path, because } = complaint;
  const { given, unit } = known.get(path)!;
  const param = spec.table.get(path)!;
  const system = unit === 'mm' ? 'mm' : 'in';
  const tries = complaint.try === undefined ? [] : [formatValue<typeof param>(param, complaint.try as never, system)];
  const accepted = firstAccepted({ spec, known, path }, param, tries);
  return { code: 'rule', path, given, from: fromOf(known, complaint), unit, kind: param.kind, because, try: accepted };
}

/** Who gave the value. Behind a default stand the fields that no longer agree with it. */
function fromOf(known: ReadonlyMap<string, Input>, { path, fields }: Complaint): string {
  const { from } = known.get(path)!;
  if (from !== DEFAULT) return from;
  const others = new Set(fields.map((field) => known.get(field)!.from));
  others.delete(DEFAULT);
  return others.size > 0 ? `${DEFAULT}, beside ${[...others].join(' and ')}` : DEFAULT;
}
