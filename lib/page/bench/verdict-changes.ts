import { type Finding, VERDICTS, type Verdict } from '../../model/finding.ts';
import type { Named } from './change.ts';

/** The worst verdict of each check on each part, in words: "sag, top". */
export function verdictsOf(findings: readonly Finding[], nameOf: (part: string) => string): readonly Named[] {
  const worst = new Map<string, Verdict>();
  for (const { check, part, verdict } of findings) {
    const name = `${check}, ${nameOf(part)}`;
    const known = worst.get(name);
    if (!known || VERDICTS.indexOf(verdict) < VERDICTS.indexOf(known)) worst.set(name, verdict);
  }
  return [...worst].map(([name, text]) => ({ name, text }));
}
