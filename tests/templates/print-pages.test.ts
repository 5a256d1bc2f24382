import { describe, expect, it } from 'vitest';
import { templatePdfs } from '../../lib/build/output-templates-pdf.ts';
import { coverPage } from '../../lib/derive/templates/cover-page.ts';
import { PRINT_PAPERS } from '../../lib/derive/templates/print-papers.ts';
import { templates } from '../../lib/derive/templates/templates.ts';
import { tilePages } from '../../lib/derive/templates/tile-pages.ts';
import { tiledMarks } from '../../lib/derive/templates/tiled-marks.ts';
import { tilingOf, workLines } from '../../lib/derive/templates/tiling.ts';
import { boundsOf } from '../../lib/drawing/bounds.ts';
import { clipMarks, isWithin } from '../../lib/drawing/clip-marks.ts';
import type { Mark } from '../../lib/drawing/entity.ts';
import { neededTiles, tileCell, tileName, tilePlaces, tileWindow } from '../../lib/drawing/tile-grid.ts';
import { readFonts } from '../../scripts/assets/fonts.ts';
import { hasPdfTools, withPdf } from '../readers/pdf-tools.ts';
import { jobOf } from '../written.ts';

const NAMES = ['reading-table', 'meeting-table', 'study-table'] as const;
const FONTS = readFonts();

const all = NAMES.flatMap((name) => {
  const { assembly, design } = jobOf(name);
  return templates(assembly, design).flatMap((template) =>
    PRINT_PAPERS.map((paper) => ({
      template,
      paper,
      heading: design,
      of: `${name} ${template.part.mark} ${paper.name}`,
    })),
  );
});

const lengthOf = (marks: readonly Mark[]): number =>
  marks.reduce((sum, mark) => {
    if (mark.kind !== 'poly') return sum;
    const points = mark.closed ? [...mark.points, mark.points[0]!] : mark.points;
    return points.slice(1).reduce((total, [x, y], i) => {
      const [u, v, bulge = 0] = points[i]!;
      const chord = Math.hypot(x - u, y - v);
      const turn = 4 * Math.atan(Math.abs(bulge));
      return total + (bulge === 0 ? chord : (chord / 2 / Math.sin(turn / 2)) * turn);
    }, sum);
  }, 0);

describe('sheets of a template', () => {
  it('show every line once up to the middles of the overlaps, and none is printed empty', () => {
    for (const { template, paper, of } of all) {
      const { grid, tiles } = tilingOf(template, paper);
      const lines = workLines(template);
      const shares = tiles.map((place) => lengthOf(clipMarks(lines, tileCell(grid, place))));
      expect(
        shares.reduce((a, b) => a + b, 0),
        of,
      ).toBeCloseTo(lengthOf(lines), 5);
      expect(Math.min(...shares), of).toBeGreaterThan(0);
    }
  });

  it('leave out what boxes would have them print: the inside of a panel', () => {
    const panel = all.find(({ of }) => of === 'study-table L1 letter')!;
    const { grid, tiles } = tilingOf(panel.template, panel.paper);
    expect([tilePlaces(grid).length, tiles.length]).toEqual([20, 16]);
    const names = tiles.map(tileName);
    expect(['B2', 'D2', 'B3', 'D3'].filter((name) => names.includes(name))).toEqual([]);
    const box = boundsOf(workLines(panel.template), 1)!;
    const inside = tilePlaces(grid).filter((place) => {
      const { min, max } = tileCell(grid, place);
      return min[0] < box.max[0] && max[0] > box.min[0] && min[1] < box.max[1] && max[1] > box.min[1];
    });
    expect(inside).toHaveLength(20);
  });

  it('are joined: a lone line inside brings the sheets that lead to it', () => {
    const panel = all.find(({ of }) => of === 'study-table L1 letter')!;
    const { grid } = tilingOf(panel.template, panel.paper);
    const dot = (name: string): Mark => {
      const { min, max } = tileCell(grid, tilePlaces(grid).find((place) => tileName(place) === name)!);
      const [x, y] = [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2];
      return {
        kind: 'poly',
        layer: workLines(panel.template)[0]!.layer,
        points: [
          [x, y],
          [x + 1, y],
        ],
        closed: false,
      };
    };
    expect(neededTiles(grid, [dot('A1'), dot('C1')]).map(tileName)).toEqual(['A1', 'B1', 'C1']);
    expect(neededTiles(grid, [dot('B2'), dot('B4')]).map(tileName)).toEqual(['B2', 'B3', 'B4']);
  });

  it('have every lettering whole on one of them', () => {
    let seen = 0;
    for (const { template, paper, heading, of } of all) {
      const tiling = tilingOf(template, paper);
      const windows = tiling.tiles.map((place) => tileWindow(tiling.grid, place));
      const texts = tiledMarks(template, tiling, heading.units).filter((mark) => mark.kind === 'text');
      for (const text of texts) {
        expect(
          windows.some((window) => isWithin(text, window)),
          `${of}: ${text.text}`,
        ).toBe(true);
      }
      expect(
        texts.map(({ text }) => text),
        of,
      ).toContain(template.face.parts.map(({ mark }) => mark).join(' '));
      expect(
        texts.some(({ text }) => text === 'grain'),
        of,
      ).toBe(true);
      seen += texts.length;
    }
    expect(seen).toBeGreaterThan(100);
  });

  it('carry the same number on both sides of every seam, twice', () => {
    for (const { template, paper, heading, of } of all) {
      const numbers = tilePages(template, paper, heading)
        .filter(({ name }) => /^[A-Z]\d+$/.test(name))
        .flatMap(({ marks }) =>
          marks.flatMap((mark) => (mark.kind === 'text' && mark.layer.name === 'GAUGE' ? [mark.text] : [])),
        )
        .filter((text) => /^\d+$/.test(text));
      const counts = new Set([...new Set(numbers)].map((one) => numbers.filter((other) => other === one).length));
      // Where four sheets lie over each other none has a cross; the sides of others may be seen as well.
      expect(
        [...counts].every((count) => count >= 2),
        of,
      ).toBe(true);
      expect(numbers.length, of).toBeGreaterThan(3);
    }
  });

  it('say what was found in spite of which they are made, on every page', () => {
    const { template, paper, heading } = all[0]!;
    const warned = { ...heading, warning: 'made in spite of "change it": slot cover' };
    for (const { name, marks } of tilePages(template, paper, warned)) {
      expect(
        marks.some((mark) => mark.kind === 'text' && mark.text.includes(warned.warning)),
        name,
      ).toBe(true);
    }
  });

  it('have a map that crosses out the sheets that are not printed', () => {
    const panel = all.find(({ of }) => of === 'study-table L1 letter')!;
    const tiling = tilingOf(panel.template, panel.paper);
    const { marks } = coverPage(panel.template, tiling, panel.paper, panel.heading);
    const texts = marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));
    expect(texts.filter((text) => /^[A-E][1-4]$/.test(text))).toEqual(tiling.tiles.map(tileName));
    expect(texts).toContain('sheet 16');
    expect(texts).not.toContain('B2');
  });
});

describe.skipIf(!hasPdfTools())('template PDFs, asked with qpdf and poppler', () => {
  it.each(NAMES)('of %s are sound, sized as they say, and the same bytes twice', async (name) => {
    const job = jobOf(name);
    const [files, again] = [await templatePdfs(job, FONTS), await templatePdfs(job, FONTS)];
    const paths = [...files.keys()];
    expect(paths.length % 3).toBe(0);
    for (const path of paths) {
      expect(Buffer.from(files.get(path)!).equals(again.get(path)!), path).toBe(true);
      withPdf(files.get(path)!, (pdf) => {
        expect(pdf.faults, path).toBe('');
        expect(
          pdf.fonts.map(([, embedded]) => embedded),
          path,
        ).toEqual([true, true]);
        const sides = pdf.sizes.map(([w, h]) => [Math.min(w, h), Math.max(w, h)].map((v) => Math.round(v)));
        const paper = path.endsWith('-letter.pdf') ? [612, 792] : [595, 842];
        if (path.endsWith('-roll.pdf')) expect(sides).toHaveLength(1);
        else expect(new Set(sides.map(String)), path).toEqual(new Set([String(paper)]));
        expect(pdf.text(), path).toContain('Print at 100 %');
      });
    }
  });

  it('of the bearer give its dimensions, offsets and overall sizes back as text', async () => {
    const files = await templatePdfs(jobOf('reading-table'), FONTS);
    withPdf(files.get('templates/b1-frame-a-bearer-letter.pdf')!, (pdf) => {
      expect(pdf.text(1)).toContain('full size, finished line: 30" (762) long, 3 1\u20442" (88.9) high over all');
      expect(pdf.text(1)).toContain('100 mm square');
      // 10 in from the center line: 88.9 - 0.05625 x 127 = 81.756 mm, up to the next 1/64 in 3 7/32.
      expect(pdf.text(2)).toMatch(/10" \(254\) +3 7\u204432" \(81\.8\)/);
      expect(pdf.text(2)).toContain('slope 3.22 deg, 9\u204416" in 10"');
      expect(pdf.text(3)).toContain('3 1\u20442" (88.9)');
    });
    withPdf(files.get('templates/b1-frame-a-bearer-roll.pdf')!, (pdf) => {
      for (const words of ['25 57\u204464" (657.6)', '30" (762)', '173.56\u00b0']) expect(pdf.text()).toContain(words);
    });
  });
});
