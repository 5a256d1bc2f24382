import { type Finding, findingNumbers, groupByBasis } from 'tablewright';
import { wrapped } from './wrapped.ts';

/** Findings of one verdict, whole: each with its numbers and what would mend it; what several rest on is told below the last. */
export function fullText(findings: readonly Finding[], units: 'in' | 'mm'): string[] {
  return groupByBasis(findings).flatMap(({ basis, findings: group }) => {
    const below = ['', '', 'both: '][group.length] ?? `all ${group.length}: `;
    return [
      ...group.flatMap((finding) => [
        ...wrapped(`${finding.check}: ${finding.because}`, '  ', '    '),
        ...numbersText(finding, units),
        ...finding.fixes.flatMap((fix) => wrapped(`try: ${fix}`, '      ')),
      ]),
      ...wrapped(`${below}limit: ${basis.source}`, '      '),
      ...(basis.load === undefined ? [] : wrapped(`load: ${basis.load}`, '      ')),
      ...basis.assumptions.flatMap((one) => wrapped(`assumed: ${one}`, '      ')),
      ...(basis.unconfirmed.length === 0
        ? []
        : wrapped(`rests on wood data still to be confirmed: ${basis.unconfirmed.join('; ')}`, '      ')),
    ];
  });
}

/** `value 2.7 mm (1.9 mm to 2.7 mm), limit 3 mm` */
function numbersText(finding: Finding, units: 'in' | 'mm'): string[] {
  const { value, limit, range } = findingNumbers(finding, units);
  const parts = [value && `value ${value}${range && ` (${range})`}`, limit && `limit ${limit}`].filter(Boolean);
  return parts.length > 0 ? [`      ${parts.join(', ')}`] : [];
}
