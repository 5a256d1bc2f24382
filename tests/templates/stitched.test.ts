import { describe, expect, it } from 'vitest';
import type { Files } from '../../lib/build/output.ts';
import { templatePdfs } from '../../lib/build/output-templates-pdf.ts';
import { readFonts } from '../../scripts/assets/fonts.ts';
import { hasPdfTools, type PdfReader, type Raster, withPdf } from '../readers/pdf-tools.ts';
import { type DesignName, jobOf } from '../written.ts';
import { DPI, type FoundCross, findCrosses, inkMiddle, inkRun, type Pixel, PX, wideLines } from './pixels.ts';

interface Sheet {
  readonly name: string;
  readonly raster: Raster;
  readonly crosses: readonly FoundCross[];
}

/** The sheets of a template, rendered at 300 dpi, by the name that stands largest on them. */
function sheetsOf(pdf: PdfReader): Sheet[] {
  return pdf.sizes.flatMap((_, k): Sheet[] => {
    const words = pdf.words(k + 1);
    const name = words.find(
      ({ text, left, top, bottom }) => /^[A-Z]\d+$/.test(text) && left < 65 && bottom - top > 20 && top < 50,
    )?.text;
    if (!name) return [];
    const raster = pdf.raster(k + 1, DPI);
    return [{ name, raster, crosses: findCrosses(raster, words) }];
  });
}

/** How far the paper of one sheet lies from that of another when crosses of one number are laid over each other, pixels. */
function step(from: Sheet, to: Sheet): Pixel {
  const pairs = from.crosses.flatMap((one) => {
    const other = to.crosses.find(({ number }) => number === one.number);
    return other ? [[one.at[0] - other.at[0], one.at[1] - other.at[1]] as const] : [];
  });
  expect(pairs).toHaveLength(2);
  // Both crosses of a seam say the same, or the sheets would have to be turned.
  expect(Math.hypot(pairs[0]![0] - pairs[1]![0], pairs[0]![1] - pairs[1]![1])).toBeLessThan(0.3);
  return [(pairs[0]![0] + pairs[1]![0]) / 2, (pairs[0]![1] + pairs[1]![1]) / 2];
}

const joined = (sheets: readonly Sheet[]): Pixel =>
  sheets.slice(1).reduce<Pixel>(
    ([x, y], sheet, i) => {
      const [dx, dy] = step(sheets[i]!, sheet);
      return [x + dx, y + dy];
    },
    [0, 0],
  );

const builds = new Map<DesignName, Promise<Files>>();

async function made(name: DesignName, path: string): Promise<Uint8Array> {
  const build = builds.get(name) ?? templatePdfs(jobOf(name), readFonts());
  builds.set(name, build);
  return (await build).get(path)!;
}

describe.skipIf(!hasPdfTools())('sheets rendered at 300 dpi and joined by their crosses', () => {
  it('hold the bearer over 762 mm to 0.1 mm', async () => {
    const bytes = await made('reading-table', 'templates/b1-frame-a-bearer-letter.pdf');
    withPdf(bytes, (pdf) => {
      const sheets = sheetsOf(pdf);
      expect(sheets.map(({ name }) => name)).toEqual(['A1', 'B1', 'C1', 'D1']);
      expect(sheets.map(({ crosses }) => crosses.map(({ number }) => number).sort())).toEqual([
        ['1', '2'],
        ['1', '2', '3', '4'],
        ['3', '4', '5', '6'],
        ['5', '6'],
      ]);
      const left = wideLines(sheets[0]!.raster, 'x', 50).filter((x) => x > 25 * PX)[0]!;
      const right = wideLines(sheets[3]!.raster, 'x', 50).at(-1)!;
      const length = (right + joined(sheets)[0] - left) / PX;
      expect(Math.abs(length - 762)).toBeLessThan(0.1);
    });
  });

  it('hold the post over 699 mm to 0.1 mm, sheet below sheet', async () => {
    const bytes = await made('meeting-table', 'templates/p1-frame-a-post-1-a4.pdf');
    withPdf(bytes, (pdf) => {
      const sheets = sheetsOf(pdf);
      expect(sheets.map(({ name }) => name)).toEqual(['A1', 'A2', 'A3']);
      const [first, last] = [sheets[0]!, sheets.at(-1)!];
      const foot = wideLines(last.raster, 'y', 80).at(-1)!;
      const left = wideLines(last.raster, 'x', 50).filter((x) => x > 25 * PX)[0]!;
      const column = Math.round(left + 60 * PX - joined(sheets)[0]);
      const rows = Array.from({ length: first.raster.height }, (_, y) => y);
      const dark = (y: number): boolean => first.raster.gray[y * first.raster.width + column]! < 128;
      const top = rows.findIndex((y) => y > 21.5 * PX && [0, 1, 2, 3, 4].every((k) => dark(y + k)));
      const head = inkMiddle(first.raster, 'y', [column, top + 2], 6, column, column);
      // The edge rises by 4.125 mm over 90 mm, from 696.146 mm at the left.
      const height = (foot + joined(sheets)[1] - head) / PX;
      expect(Math.abs(height - (696.146 + (4.125 * 60) / 90))).toBeLessThan(0.1);
    });
  });

  it('carry bars of 100 mm and 4 in both ways, right to a pixel, on every page', async () => {
    const bytes = await made('reading-table', 'templates/b1-frame-a-bearer-letter.pdf');
    withPdf(bytes, (pdf) => {
      expect(pdf.sizes).toHaveLength(6);
      for (const [k] of pdf.sizes.entries()) {
        const raster = pdf.raster(k + 1, DPI);
        const low = (mm: number): number => Math.round(raster.height - mm * PX);
        const across = (from: number, to: number): number => inkRun(raster, 'x', 15 * PX, [low(to), low(from)]);
        const up = (from: number, to: number): number =>
          inkRun(raster, 'y', low(15), [Math.round(from * PX), Math.round(to * PX)]);
        expect(Math.abs(across(14, 15.8) - 1200), `page ${k + 1}`).toBeLessThanOrEqual(1);
        expect(Math.abs(across(17.2, 19) - 1181.1), `page ${k + 1}`).toBeLessThanOrEqual(1.1);
        expect(Math.abs(up(17.2, 19) - 1200), `page ${k + 1}`).toBeLessThanOrEqual(1);
        expect(Math.abs(up(14, 15.8) - 1181.1), `page ${k + 1}`).toBeLessThanOrEqual(1.1);
      }
    });
  });

  it('sees a print at 97 %', async () => {
    const bytes = await made('reading-table', 'templates/b1-frame-a-bearer-letter.pdf');
    withPdf(bytes, (pdf) => {
      const raster = pdf.raster(3, DPI * 0.97);
      const low = (mm: number): number => Math.round(raster.height - mm * PX * 0.97);
      expect(1200 - inkRun(raster, 'x', 15 * PX, [low(15.8), low(14)])).toBeGreaterThan(30);
    });
  });
});
