import { describe, expect, test } from 'vitest';
import { sheetsOf } from '../../lib/build/output-drawings.ts';
import type { Linear } from '../../lib/drawing/dim.ts';
import type { Pt } from '../../lib/drawing/entity.ts';
import { explode } from '../../lib/drawing/explode.ts';
import type { Sheet } from '../../lib/drawing/sheet.ts';
import { measuredJob, moved } from '../records/measured-jobs.ts';
import { jobOf } from './sheet-jobs.ts';

const textsOf = ({ drawing }: Sheet): string[] =>
  drawing.entities.flatMap((one) => (one.kind === 'text' ? [one.text] : []));

const sheetOf = (sheets: readonly Sheet[], name: string): string[] => {
  const found = sheets.find((sheet) => sheet.name === name);
  if (!found) throw new Error(`no sheet ${name} among ${sheets.map((sheet) => sheet.name).join(', ')}`);
  return textsOf(found);
};

/** The cells of a row, from its head on, up to the next head. */
function rowOf(texts: readonly string[], head: string, columns: number): string[] {
  const heads = texts.filter((text) => /^(thickness|as designed|over the floor), /.test(text));
  const names = texts.slice(texts.indexOf(heads.at(-1)!) + 1);
  const row = heads.indexOf(head);
  // A column is written from above, its name first.
  return Array.from({ length: columns }, (_, k) => names[k * (heads.length + 1) + 1 + row]!);
}

describe('sheets of a top that was measured', () => {
  // The left half is 1.5 mm deeper at the center line and falls 0.06 a mm, the right half as designed: t = 57.15 - 0.05625 x.
  const sheets = sheetsOf(measuredJob('reading-table', moved({ left: { c: 1.5, b: 0.00375 } })));
  const left = sheetOf(sheets, 'section-left');
  const right = sheetOf(sheets, 'section-right');

  test('tell the thickness as designed beside what was measured, at every joint and at the edge', () => {
    const at = [0, 127, 254, 381, 508];
    const designed = at.map((x) => String(Math.round((57.15 - 0.05625 * x) * 10) / 10));
    const up = (mm: number): string => String(Math.ceil(mm * 10 - 1e-6) / 10);
    expect(rowOf(left, 'as designed, mm', 5)).toEqual(designed);
    expect(rowOf(right, 'as designed, mm', 5)).toEqual(designed);
    expect(rowOf(left, 'thickness, mm', 5)).toEqual(at.map((x) => up(Math.min(57.15, 58.65 - 0.06 * x))));
    expect(rowOf(right, 'thickness, mm', 5)).toEqual(at.map((x) => up(57.15 - 0.05625 * x)));
  });

  // atan(0.06) is 3.43 deg, atan(0.05625) 3.22 deg.
  test('tell the slope of each half on its own sheet, and of both on that of the top', () => {
    expect(left.join(' ')).toContain('rises 3.43 deg');
    expect(right.join(' ')).toContain('rises 3.22 deg');
    const top = sheetOf(sheets, 'part-t').join(' ').replace(/\s+/g, ' ');
    expect(top).toContain('left slope 3.43 deg');
    expect(top).toContain('right slope 3.22 deg');
  });

  test('say at which end of a bearer which slope is', () => {
    // B1 is laid out from right to left, B2 is the same turned over.
    const words = sheetOf(sheets, 'part-b1').join(' ');
    expect(words).toMatch(/towards the reference end slope 3\.22 deg.*towards the far end slope 3\.43 deg/);
    expect(words).toContain('B2 the same, but turned over');
  });

  test('say on the approval sheet that its sizes are as designed', () => {
    expect(sheetOf(sheets, 'approval').join(' ')).toContain('as designed; the finished top was measured on 2026-12-01');
  });

  test('and nothing of it where nothing was measured', () => {
    const plain = sheetsOf(jobOf('reading-table')).map((sheet) => textsOf(sheet).join(' '));
    expect(plain.filter((text) => text.includes('as designed'))).toEqual([]);
  });

  // Where an underside slopes along the table as well, the far face of a post reaches a hair further than the near one.
  test('give no size twice, from one place to the same other', () => {
    const tilted = moved({ left: { a: -1e-4, b: 5e-4 }, right: { a: 1e-4 } });
    const parts = sheetsOf(measuredJob('meeting-table', tilted)).filter(({ name }) => name.startsWith('part-'));
    const near = (p: Pt, q: Pt): boolean => Math.hypot(p[0] - q[0], p[1] - q[1]) < 0.05;
    for (const { name, drawing } of parts) {
      const dims = drawing.entities.filter((e): e is Linear => e.kind === 'dim' && e.type === 'linear');
      const twice = dims.filter((a, k) =>
        dims.slice(0, k).some((b) => a.angle === b.angle && near(a.from, b.from) && near(a.to, b.to)),
      );
      expect(
        twice.map((dim) => explode(dim, drawing.style).text),
        name,
      ).toEqual([]);
    }
    expect(parts.length).toBeGreaterThan(10);
  });
});
