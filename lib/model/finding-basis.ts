import type { Finding } from './finding.ts';

/** What findings of one check rest on. */
export interface Basis {
  readonly check: string;
  /** Where the limit comes from. */
  readonly source: string;
  readonly load: string | undefined;
  readonly assumptions: readonly string[];
  /** Inputs that are from memory. */
  readonly unconfirmed: readonly string[];
}

/** Findings that rest on the same. */
export interface BasisGroup {
  readonly basis: Basis;
  readonly findings: readonly Finding[];
}

/** Findings by what they rest on, in the order in which each ground comes first. */
export function groupByBasis(findings: readonly Finding[]): readonly BasisGroup[] {
  const groups = new Map<string, { readonly basis: Basis; readonly findings: Finding[] }>();
  for (const finding of findings) {
    const { check, source, load, assumptions = [], unconfirmed = [] } = finding;
    const basis: Basis = { check, source, load, assumptions, unconfirmed };
    const key = JSON.stringify([check, source, load, assumptions, unconfirmed]);
    const group = groups.get(key);
    if (group) group.findings.push(finding);
    else groups.set(key, { basis, findings: [finding] });
  }
  return [...groups.values()];
}
