import { checksText, drawTogether, type Finding, likeText, VERDICTS } from 'tablewright';
import { fullText } from './full-findings.ts';
import { type Paint, VERDICT_STYLE } from './paint.ts';
import { wrapped } from './wrapped.ts';

/**
 * Findings under their verdicts, worst first. Short: of what one check says of one part only the worst, what would mend
 * it and where its limit comes from; of what is ok only the names of the checks. All: each of them, whole.
 */
export function findingsText(findings: readonly Finding[], all: boolean, units: 'in' | 'mm', paint: Paint): string {
  return VERDICTS.map((verdict) => findings.filter((one) => one.verdict === verdict))
    .filter((group) => group.length > 0)
    .map((group) => {
      const { verdict } = group[0]!;
      const lines = all ? fullText(group, units) : verdict === 'ok' ? okText(group) : shortText(group);
      return [paint(VERDICT_STYLE[verdict], `${verdict} (${group.length})`), ...lines].join('\n');
    })
    .join('\n\n');
}

function shortText(group: readonly Finding[]): string[] {
  return drawTogether(group).flatMap((entry) => [
    ...wrapped(likeText(entry), '  ', '    '),
    ...entry.worst.fixes.flatMap((fix) => wrapped(`try: ${fix}`, '      ')),
    ...wrapped(`limit: ${entry.worst.source}`, '      '),
  ]);
}

const okText = (group: readonly Finding[]): string[] => wrapped(checksText(group), '  ');
