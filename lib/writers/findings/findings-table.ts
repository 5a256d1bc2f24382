import type { Finding } from '../../model/finding.ts';
import { type BasisGroup, groupByBasis } from '../../model/finding-basis.ts';
import { findingNumbers } from '../../model/finding-number.ts';
import type { UnitSystem } from '../../units/format-length.ts';
import { escapeXml } from '../svg/xml.ts';

/** Findings of one verdict: under the name of each check a table, and below it what its rows rest on. */
export function findingsTables(findings: readonly Finding[], units: UnitSystem): string[] {
  return groupByBasis(findings).flatMap((group, k, all) => [
    ...(group.basis.check === all[k - 1]?.basis.check ? [] : [`<h3>${escapeXml(group.basis.check)}</h3>`]),
    ...table(group.findings, units),
    ...basisList(group),
  ]);
}

function table(findings: readonly Finding[], units: UnitSystem): string[] {
  const numbers = findings.map((finding) => findingNumbers(finding, units));
  const has = {
    value: numbers.some(({ value }) => value !== ''),
    limit: numbers.some(({ limit }) => limit !== ''),
    fixes: findings.some(({ fixes }) => fixes.length > 0),
  };
  const heads = [
    head('what was found', ''),
    ...(has.value ? [head(VALUE, 'number')] : []),
    ...(has.limit ? [head(LIMIT, 'number')] : []),
    ...(has.fixes ? [head(MEND, 'mend')] : []),
  ];
  const rows = findings.map((finding, k) => {
    const { value, limit, range } = numbers[k]!;
    const shown = range ? `${value} (${range})` : value;
    return [
      `<tr><th scope="row">${escapeXml(finding.because)}</th>`,
      ...(has.value ? [cell(VALUE, 'number', escapeXml(shown))] : []),
      ...(has.limit ? [cell(LIMIT, 'number', escapeXml(limit))] : []),
      ...(has.fixes ? [cell(MEND, 'mend', list(finding.fixes))] : []),
      '</tr>',
    ].join('');
  });
  return ['<table>', `<thead><tr>${heads.join('')}</tr></thead>`, '<tbody>', ...rows, '</tbody>', '</table>'];
}

const VALUE = 'value';
const LIMIT = 'limit';
const MEND = 'what would mend it';

const head = (text: string, kind: string): string => `<th scope="col"${classOf(kind)}>${text}</th>`;

const cell = (name: string, kind: string, content: string): string =>
  `<td${classOf(kind)} data-head="${name}">${content}</td>`;

const classOf = (kind: string): string => (kind ? ` class="${kind}"` : '');

function list(items: readonly string[]): string {
  if (items.length < 2) return items.map(escapeXml).join('');
  return `<ul>${items.map((item) => `<li>${escapeXml(item)}</li>`).join('')}</ul>`;
}

function basisList({ basis }: BasisGroup): string[] {
  const entries: readonly (readonly [string, string])[] = [
    ['the limit comes from', basis.source],
    ['the load', basis.load ?? ''],
    ['assumed', basis.assumptions.join('; ')],
    ['rests on wood data still to be confirmed', basis.unconfirmed.join('; ')],
  ];
  const shown = entries.filter(([, text]) => text !== '');
  return ['<dl>', ...shown.map(([name, text]) => `<dt>${name}</dt><dd>${escapeXml(text)}</dd>`), '</dl>'];
}
