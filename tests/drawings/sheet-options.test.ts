import { describe, expect, test } from 'vitest';
import design from '../../designs/reading-table/design.ts';
import { sheetsOf } from '../../lib/build/output-drawings.ts';
import { readDesign } from '../../lib/build/read-design.ts';
import { renderIssues } from '../../lib/params/render-issue.ts';
import { defineSheets, type SheetsGiven } from '../../lib/shop/sheets.ts';
import { jobOf } from './sheet-jobs.ts';

const textsOf = (given: SheetsGiven, name: 'reading-table' | 'meeting-table' = 'reading-table'): string[] =>
  sheetsOf(jobOf(name, [], { sheets: given }))[0]!.drawing.entities.flatMap((e) => (e.kind === 'text' ? [e.text] : []));

describe('what a design says of its sheets', () => {
  test('the usual set follows its units', () => {
    const [inches] = sheetsOf(jobOf('reading-table'));
    const [metric] = sheetsOf(jobOf('meeting-table'));
    expect([inches!.paper.name, metric!.paper.name]).toEqual(['B', 'A3']);
    expect(textsOf({})).toContain('Far end');
    expect(textsOf({}, 'meeting-table')).toContain('Reference end');
  });

  test('owner, paper, angle, lengths and finish are taken up', () => {
    const given = {
      owner: 'Workshop at the mill',
      paper: 'A2',
      projection: 'first',
      lengths: 'mm',
      finish: 'soap',
    } as const;
    const [sheet] = sheetsOf(jobOf('reading-table', [], { sheets: given }));
    expect(sheet!.paper.name).toBe('A2');
    const texts = textsOf(given);
    for (const text of ['Workshop at the mill', 'soap', 'mm', 'Reference end']) expect(texts).toContain(text);
  });

  test('is refused as data, all at once', () => {
    const sheets = { set: 'us', paper: 'A3', owner: 3, angle: 'third' };
    const { issues } = readDesign({ default: { ...design, sheets } }, 'designs/x/design.ts');
    expect(renderIssues(issues!, 'in', 'nothing was done')).toMatchInlineSnapshot(`
      "error: sheets.owner is 3; it must be text
             given by designs/x/design.ts
             try sheets: { owner: '' }

      error: sheets.paper is A3; that does not go with the rest
             papers of the set "us" are A, B, C, D
             given by designs/x/design.ts
             try sheets: { paper: 'usual' }

      error: there is no parameter sheets.angle
             there are sheets.owner, sheets.set, sheets.paper, sheets.projection, sheets.lengths and sheets.finish
             given by designs/x/design.ts

      3 problems; nothing was done"
    `);
    expect(() => defineSheets(sheets as never)).toThrow('the sheets cannot be read');
  });
});

describe('the words of an approval sheet', () => {
  test('hold what a client agrees to, and no price', () => {
    const words = textsOf({}).join(' ');
    for (const part of [
      'black cherry',
      'rounded 1/8" above',
      '2 coats of',
      '6: 2 at each long side, 1 at each end',
      'widens about',
    ])
      expect(words).toContain(part);
    expect(words).toContain('Approved as drawn: revision A of 2026-11-25');
    expect(words).not.toMatch(/\$|price|cost|safe|certif|complian/i);
  });

  test('every sheet of a piece made in spite of "change it" says so', () => {
    const sheets = sheetsOf(jobOf('reading-table', ['top.edgeThickness=12 mm'], {}, 'checked'));
    for (const { drawing } of sheets) {
      const texts = drawing.entities.flatMap((e) => (e.kind === 'text' ? [e.text] : []));
      expect(texts.some((text) => text.startsWith('made in spite of "change it": slot cover'))).toBe(true);
    }
  });
});
