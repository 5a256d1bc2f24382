import { type Finding, VERDICTS, type Verdict, worst } from '../model/finding.ts';
import type { UnitSystem } from '../units/format-length.ts';
import { FINDINGS_STYLE } from './findings/findings-style.ts';
import { findingsTables } from './findings/findings-table.ts';
import { escapeXml } from './svg/xml.ts';

/** What the page of findings shows. */
export interface FindingsPage {
  readonly title: string;
  readonly number?: string | undefined;
  readonly revision: string;
  readonly date: string;
  readonly units: UnitSystem;
  readonly findings: readonly Finding[];
  /** What must not be overlooked, above all else. */
  readonly warning?: string | undefined;
  readonly cautions: readonly Caution[];
}

/** What no check can tell. */
export interface Caution {
  readonly title: string;
  readonly text: string;
}

/** One page of HTML that needs nothing else: findings worst first, what each rests on, and the cautions. */
export function findingsHtml(page: FindingsPage): string {
  const { title, number, revision, date, units, findings, warning, cautions } = page;
  const groups = VERDICTS.map((verdict) => ({ verdict, found: findings.filter((one) => one.verdict === verdict) }));
  const shown = groups.filter(({ found }) => found.length > 0);
  const sub = [...(number === undefined ? [] : [`no. ${number}`]), `revision ${revision}`, date].join(', ');
  return [
    '<!DOCTYPE html>',
    '<html lang="en">',
    '<head>',
    '<meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>Findings: ${escapeXml(title)}</title>`,
    `<style>${FINDINGS_STYLE}</style>`,
    '</head>',
    '<body>',
    '<header>',
    `<h1>${escapeXml(title)}: what the checks say</h1>`,
    `<p class="sub">${escapeXml(sub)}</p>`,
    ...(warning ? [`<p class="warning">${escapeXml(sentence(warning))}</p>`] : []),
    `<p class="sum">${escapeXml(summary(findings))}</p>`,
    '</header>',
    '<nav aria-label="on this page">',
    '<ul>',
    ...shown.map(({ verdict, found }) => `<li><a href="#${idOf(verdict)}">${verdict} (${found.length})</a></li>`),
    '<li><a href="#cautions">cautions</a></li>',
    '</ul>',
    '</nav>',
    '<main>',
    ...shown.flatMap(({ verdict, found }) => [
      `<section aria-labelledby="${idOf(verdict)}"${verdict === 'ok' ? ' class="brief"' : ''}>`,
      `<h2 id="${idOf(verdict)}" class="${idOf(verdict)}">${sentenceCase(verdict)} (${found.length})</h2>`,
      ...findingsTables(found, units),
      '</section>',
    ]),
    '<section aria-labelledby="cautions">',
    '<h2 id="cautions">Cautions</h2>',
    ...cautions.flatMap((one) => [`<h3>${escapeXml(one.title)}</h3>`, `<p>${escapeXml(one.text)}</p>`]),
    '</section>',
    '</main>',
    '</body>',
    '</html>',
    '',
  ].join('\n');
}

const SUMMARIES: { readonly [V in Verdict]: string } = {
  'change it': 'There is something to change before wood is cut.',
  'look again': 'Nothing must be changed, but some things deserve another look.',
  'not checked': 'Nothing was found, but not everything could be checked.',
  ok: 'All that was checked is ok.',
};

const summary = (findings: readonly Finding[]): string =>
  findings.length > 0 ? SUMMARIES[worst(findings)] : 'There is nothing to check.';

const idOf = (verdict: Verdict): string => verdict.replace(' ', '-');

const sentenceCase = (text: string): string => `${text[0]!.toUpperCase()}${text.slice(1)}`;

const sentence = (text: string): string => `${sentenceCase(text)}.`;
