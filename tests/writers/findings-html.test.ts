import { describe, expect, it } from 'vitest';
import table from '../../designs/reading-table/design.ts';
import { findingsPage } from '../../lib/build/findings-page.ts';
import { makeJob } from '../../lib/build/job.ts';
import { readValues } from '../../lib/params/read-values.ts';
import { findingsHtml } from '../../lib/writers/findings-html.ts';
import { type HtmlElement, parseHtml } from './parse-html.ts';

const job = makeJob(table, readValues(table.params, table.values).values!);
const thin = makeJob(
  table,
  readValues(table.params, { ...table.values, top: { ...table.values.top, edgeThickness: '12 mm' } }).values!,
);

const pages = { 'as it is': job, 'with thin edges': thin };

describe.each(Object.entries(pages))('the page of findings, %s', (_, shown) => {
  const { findings } = shown;
  const html = findingsHtml(findingsPage(shown));
  const root = parseHtml(html);
  const rows = root
    .all('tr')
    .filter((row) => row.all('td').length > 0 || row.all('th')[0]?.attributes['scope'] === 'row');

  it('is well formed, says its language, and needs no other file', () => {
    expect(root.all('html')[0]?.attributes['lang']).toBe('en');
    expect(root.all('title')[0]?.text()).toBe('Findings: Reading-room table');
    expect(html).not.toMatch(/<(?:link|script|img|iframe)|url\(|@import|https?:/);
    const ids = root.every().flatMap(({ attributes }) => attributes['id'] ?? []);
    expect(new Set(ids).size).toBe(ids.length);
    const targets = root.all('a').map(({ attributes }) => attributes['href']?.slice(1));
    expect(targets.filter((target) => !ids.includes(target ?? ''))).toEqual([]);
  });

  it('has every finding once, the worst first', () => {
    const found = rows.map((row) => row.all('th')[0]!.text());
    expect([...found].sort()).toEqual(findings.map(({ because }) => because).sort());
    const verdicts = root.all('h2').map((heading) =>
      heading
        .text()
        .replace(/ \(\d+\)/, '')
        .toLowerCase(),
    );
    const order = ['change it', 'look again', 'not checked', 'ok'].filter((v) =>
      findings.some(({ verdict }) => verdict === v),
    );
    expect(verdicts).toEqual([...order, 'cautions']);
    for (const heading of root.all('section')) {
      const [, count] = /\((\d+)\)/.exec(heading.all('h2')[0]!.text()) ?? [];
      if (count) expect(heading.all('tbody').flatMap((body) => body.all('tr'))).toHaveLength(Number(count));
    }
  });

  it('has headings in order, and tables whose columns have heads', () => {
    const levels = root
      .every()
      .map(({ name }) => /^h([1-6])$/.exec(name)?.[1])
      .filter(Boolean)
      .map(Number);
    expect(levels[0]).toBe(1);
    expect(levels.filter((level) => level === 1)).toHaveLength(1);
    expect(levels.every((level, k) => k === 0 || level <= levels[k - 1]! + 1)).toBe(true);
    for (const one of root.all('table')) {
      const heads = one.all('thead')[0]!.all('th');
      expect(heads.every(({ attributes }) => attributes['scope'] === 'col')).toBe(true);
      for (const row of one.all('tbody')[0]!.all('tr')) expect(row.children).toHaveLength(heads.length);
    }
  });

  it('tells of each what it rests on', () => {
    const told = root.all('dd').map((one) => one.text());
    for (const { source, load, assumptions = [], unconfirmed = [], fixes } of findings) {
      expect(told).toContain(source);
      if (load) expect(told).toContain(load);
      if (assumptions.length > 0) expect(told).toContain(assumptions.join('; '));
      if (unconfirmed.length > 0) expect(told).toContain(unconfirmed.join('; '));
      for (const fix of fixes) expect(root.text()).toContain(fix);
    }
    expect(root.all('dt').map((one) => one.text())).toContain('rests on wood data still to be confirmed');
  });

  it('claims nothing that no model can give', () => {
    expect(root.text()).not.toMatch(/\b(?:safe|safely|certified|compliant|guaranteed?)\b/i);
    expect(root.text()).toContain('no certificate and no load rating');
  });
});

describe('the page', () => {
  const cautions = (text: string): string => parseHtml(text).all('section').at(-1)!.text();

  it('warns of what no check can tell', () => {
    const text = cautions(findingsHtml(findingsPage(job)));
    for (const word of [
      'average clear wood',
      'licensed engineers',
      'Children',
      'moisture',
      'Oily rags',
      'riving knife',
      '163 lb',
      'after a week',
    ]) {
      expect(text).toContain(word);
    }
  });

  it('says on top what it was made in spite of', () => {
    const warning = (html: string): string =>
      parseHtml(html)
        .all('p')
        .find((p) => p.attributes['class'] === 'warning')
        ?.text() ?? '';
    expect(warning(findingsHtml(findingsPage(thin)))).toMatch(
      /^Made in spite of "change it": slot cover \(\d+\), .* and \d+ more\.$/,
    );
    expect(warning(findingsHtml(findingsPage(job)))).toBe('');
  });

  it('takes any text, and a design with nothing to check', () => {
    const html = findingsHtml({ ...findingsPage(job), title: 'Desk <b>& "shelf"', number: '7<', findings: [] });
    expect(parseHtml(html).all('h1')[0]!.text()).toBe('Desk <b>& "shelf": what the checks say');
    expect(html).toContain('There is nothing to check.');
  });
});

it('a page that is not well formed is seen', () => {
  expect(() => parseHtml('<p><b>x</p></b>')).toThrow('</p> closes <b>');
  expect(() => parseHtml('<p>a < b</p>')).toThrow('a bare <');
  expect(() => parseHtml('<p>')).toThrow('<p> is not closed');
  const element: HtmlElement = parseHtml('<p id="a">x &amp; y</p>');
  expect(element.text()).toBe('x & y');
});
