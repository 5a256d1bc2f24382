import type { Finding, Verdict } from 'tablewright';
import { worstFirst } from '../../lib/model/finding.ts';
import { drawTogether, type LikeFindings } from './like-findings.ts';
import { type Paint, VERDICT_STYLE } from './paint.ts';

const WORST_FIRST: readonly Verdict[] = ['change it', 'look again', 'not checked', 'ok'];

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
  const all = WORST_FIRST.reduce((sum, verdict) => sum + counts[verdict], 0);
  const parts = WORST_FIRST.filter((verdict) => counts[verdict] > 0).map((verdict) => `${counts[verdict]} ${verdict}`);
  return `${all} ${all === 1 ? 'finding' : 'findings'}: ${parts.join(', ') || 'there is nothing to check'}`;
}

/**
 * Findings under their verdicts, worst first: the sentence, what would mend it, and where the limit comes from. Short:
 * of what one check says of one part, only the worst; and nothing that is ok.
 */
export function findingsText(findings: readonly Finding[], all: boolean, paint: Paint): string {
  const shown = worstFirst(findings).filter(({ verdict }) => all || verdict !== 'ok');
  return WORST_FIRST.map((verdict) => shown.filter((one) => one.verdict === verdict))
    .filter((group) => group.length > 0)
    .map((group) => {
      const { verdict } = group[0]!;
      const entries = all ? group.map((worst) => ({ worst, count: 1 })) : drawTogether(group);
      return [paint(VERDICT_STYLE[verdict], `${verdict} (${group.length})`), ...entries.map(entryText)].join('\n');
    })
    .join('\n\n');
}

/** `slot cover: strip T1: … (and 3 more on this part)` */
export function oneLine({ worst, count }: LikeFindings): string {
  return `${worst.check}: ${worst.because}${count > 1 ? ` (and ${count - 1} more on this part)` : ''}`;
}

function entryText(entry: LikeFindings): string {
  const { verdict, fixes, source } = entry.worst;
  const lines = [`  ${oneLine(entry)}`];
  if (verdict !== 'ok') lines.push(...fixes.map((fix) => `      try: ${fix}`), `      limit: ${source}`);
  return lines.join('\n');
}
