import { BENCH_STYLE } from './bench/bench-style.ts';
import { scriptJson, scriptText } from './bench/script-text.ts';
import { escapeXml } from './svg/xml.ts';

/** What the live page is made of. */
export interface BenchPage {
  readonly title: string;
  readonly number?: string | undefined;
  readonly revision?: string | undefined;
  readonly date?: string | undefined;
  /** What must not be overlooked of the values that the page starts with. */
  readonly warning?: string | undefined;
  /** The bundled script: library, design and the page's own. It is also what the worker runs. */
  readonly script: string;
  /** What the page starts with, for `JSON.stringify`. */
  readonly data: object;
  /** Where a server tells of changes, a path below its own; absent: the page never asks for anything. */
  readonly events?: { readonly address: string; readonly version: string };
}

/** One page of HTML that needs nothing else. Without a server it may not ask for anything at all: its own policy forbids it. */
export function benchHtml({ title, number, revision, date, warning, script, data, events }: BenchPage): string {
  const sub = [
    ...(number === undefined ? [] : [`no. ${number}`]),
    ...(revision === undefined ? [] : [`revision ${revision}`]),
    ...(date === undefined ? [] : [date]),
  ].join(', ');
  return [
    '<!DOCTYPE html>',
    '<html lang="en">',
    '<head>',
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${policy(events)}">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>At the bench: ${escapeXml(title)}</title>`,
    '<link rel="icon" href="data:,">',
    `<style>${BENCH_STYLE}</style>`,
    '</head>',
    `<body${events ? ` data-events="${escapeXml(events.address)}" data-version="${escapeXml(events.version)}"` : ''}>`,
    '<header class="head">',
    `<h1>${escapeXml(title)}</h1>`,
    `<p class="sub">${escapeXml(sub)}</p>`,
    '</header>',
    ...(warning === undefined ? [] : [`<p class="warning">${escapeXml(asMade(warning))}</p>`]),
    '<main id="bench"><noscript><p>This page works the piece out by itself, and needs scripts for it.</p></noscript></main>',
    '<p class="failed" role="alert" id="failed"></p>',
    `<script>${STUMBLE}</script>`,
    `<script type="application/json" id="bench-data">${scriptJson(data)}</script>`,
    `<script>${scriptText(script)}</script>`,
    '</body>',
    '</html>',
    '',
  ].join('\n');
}

const asMade = (warning: string): string =>
  `${warning[0]!.toUpperCase()}${warning.slice(1)}; so it was when this page was made.`;

const policy = (events: BenchPage['events']): string =>
  [
    "default-src 'none'",
    "script-src 'unsafe-inline' blob:",
    'worker-src blob:',
    "style-src 'unsafe-inline'",
    'img-src data: blob:',
    `connect-src ${events ? "'self'" : "'none'"}`,
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');

/** Says on the page what went wrong in it: nobody looks into a console at the bench. */
const STUMBLE = `addEventListener('error', (e) => {
  document.getElementById('failed').textContent = 'This page has stumbled: ' + e.message;
});`;
