import { applyRulesTo, type Known } from './apply-rules.ts';
import { effectiveRange } from './effective-range.ts';
import { defaultText } from './format-value.ts';
import type { Issue } from './issue.ts';
import { nearLengths, nearNumbers } from './near-value.ts';
import type { Param } from './param.ts';
import { readParam } from './read-param.ts';
import type { Fault } from './reading.ts';
import type { Spec } from './spec.ts';

interface Where {
  readonly spec: Spec;
  readonly known: Known;
  readonly path: string;
  readonly from: string;
}

/** An issue from what is wrong with one value: the limits the other fields leave, and a value that would do. */
export function completeFault(where: Where, fault: Fault): Issue {
  const { spec, known, path, from } = where;
  const { tries, value, ...rest } = fault;
  const param = spec.table.get(path)!;
  const issue: Issue = { ...rest, path, from };
  if (fault.code === 'text-too-long' || fault.code === 'control-character') return issue;
  const range =
    value === undefined || fault.item !== undefined
      ? undefined
      : effectiveRange(spec, known, path, { value, unit: fault.unit });
  if (!range || range.min > range.max) return { ...issue, try: firstAccepted(where, param, tries) };
  const near = param.kind === 'length' ? nearLengths : nearNumbers;
  return { ...issue, ...range, try: firstAccepted(where, param, near(range, value!, fault.unit)) };
}

/** The first text that reads well and breaks no rule over the path; the default is the last to be tried. */
export function firstAccepted(
  { spec, known, path }: Pick<Where, 'spec' | 'known' | 'path'>,
  param: Param,
  texts: readonly string[],
): string | undefined {
  return [...texts, defaultText(param)].find((text) => {
    const reading = readParam(param, text);
    return !reading.faults && applyRulesTo(spec, known, path, reading).length === 0;
  });
}
