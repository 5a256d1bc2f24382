import type { Finding, Verdict } from 'tablewright';

export type VerdictCounts = { readonly [V in Verdict]: number };

export function countVerdicts(findings: readonly Finding[]): VerdictCounts {
  const count = (verdict: Verdict): number => findings.filter((one) => one.verdict === verdict).length;
  return {
    'change it': count('change it'),
    'look again': count('look again'),
    'not checked': count('not checked'),
    ok: count('ok'),
  };
}

/** The findings that fail a check and keep a design from being built. "Not checked" always passes. */
export const blocking = (findings: readonly Finding[], strict: boolean): readonly Finding[] =>
  findings.filter(({ verdict }) => verdict === 'change it' || (strict && verdict === 'look again'));

/** `41 findings: 1 change it, 2 look again, 38 ok` */
export function countsText(counts: VerdictCounts): string {
  const entries = Object.entries(counts);
  const all = entries.reduce((sum, [, count]) => sum + count, 0);
  const parts = entries.filter(([, count]) => count > 0).map(([verdict, count]) => `${count} ${verdict}`);
  return `${all} ${all === 1 ? 'finding' : 'findings'}: ${parts.join(', ') || 'there is nothing to check'}`;
}
