import { describe, expect, it } from 'vitest';
import type { Mark } from '../../lib/drawing/entity.ts';
import { LAYERS } from '../../lib/drawing/layers.ts';
import type { Page } from '../../lib/drawing/page.ts';
import { arcCurves } from '../../lib/writers/pdf/arc-curves.ts';
import { setFractions } from '../../lib/writers/pdf/set-fractions.ts';
import { unpackWoff } from '../../lib/writers/pdf/unpack-woff.ts';
import { writePdf } from '../../lib/writers/pdf.ts';
import { readFonts } from '../../scripts/assets/fonts.ts';
import { hasPdfTools, withPdf } from '../readers/pdf-tools.ts';

const FONTS = readFonts();
const INFO = { title: 'A trial (of sorts)', date: '2026-11-25' };

const text = (words: string, more: Partial<Extract<Mark, { kind: 'text' }>> = {}): Mark => ({
  kind: 'text',
  layer: LAYERS.TEXT,
  text: words,
  at: [40, 100],
  height: 10,
  ...more,
});

const page = (marks: readonly Mark[], width = 215.9, height = 279.4): Page => ({ name: 'one', width, height, marks });

const square: Mark = {
  kind: 'poly',
  layer: LAYERS.GAUGE,
  points: [
    [20, 20],
    [120, 20],
    [120, 120],
    [20, 120],
  ],
  closed: true,
};

describe('a PDF file', () => {
  it('is the same bytes twice, and other bytes for another day', async () => {
    const make = (date = INFO.date) => writePdf([page([square, text('B1 13 3/8"')])], { ...INFO, date }, FONTS);
    const [first, second, other] = await Promise.all([make(), make(), make('2026-11-26')]);
    expect(Buffer.from(first).equals(second)).toBe(true);
    expect(Buffer.from(first).equals(other)).toBe(false);
  });

  it.each(['2026-13-01', '25.11.2026', ''])('has no day %j', async (date) => {
    await expect(writePdf([page([])], { ...INFO, date }, FONTS)).rejects.toThrow('is no date');
  });

  it('is refused with the character that its face lacks', async () => {
    for (const [letters, code] of [
      ['\u2300 12', 'U+2300'],
      ['3\u215c', 'U+215C'],
      ['a\nb', 'U+000A'],
    ] as const) {
      await expect(writePdf([page([text(letters)])], INFO, FONTS)).rejects.toThrow(code);
    }
    await expect(writePdf([page([text('\u00d812 3.2\u00b0')])], INFO, FONTS)).resolves.toBeInstanceOf(Uint8Array);
  });

  it('is refused with a sheet that no reader can show', async () => {
    await expect(writePdf([page([], 5081)], INFO, FONTS)).rejects.toThrow('5081 mm');
    await expect(writePdf([page([], 0)], INFO, FONTS)).rejects.toThrow('the width');
  });
});

describe.skipIf(!hasPdfTools())('a PDF file, asked with qpdf and poppler', () => {
  it('is sound, at its size, with its faces in it, in unscaled print', async () => {
    const pages = [page([square, text('B1'), text('B2', { bold: true })]), page([text('A4')], 210, 297)];
    withPdf(await writePdf(pages, INFO, FONTS), (pdf) => {
      expect(pdf.faults).toBe('');
      expect(pdf.sizes[0]).toEqual([612, 792]);
      expect(pdf.sizes[1]![0]).toBeCloseTo((210 * 72) / 25.4, 2);
      expect(pdf.sizes[1]![1]).toBeCloseTo((297 * 72) / 25.4, 2);
      expect(pdf.fonts.map(([name, embedded]) => [name.split('+')[1], embedded]).sort()).toEqual([
        ['NotoSans-Bold', true],
        ['NotoSans-Regular', true],
      ]);
      expect(pdf.info).toMatchObject({ Title: INFO.title, Creator: 'tablewright', 'PDF version': '1.7' });
      expect(pdf.objects()).toMatch(/\/PrintScaling \/None/);
      expect(pdf.objects()).toMatch(/\/Lang \(en-US\)/);
    });
  });

  it('sets fractions, and gives them back as text', async () => {
    withPdf(await writePdf([page([text('2 9/16" or 5/8 in, 3/7')])], INFO, FONTS), (pdf) => {
      expect(pdf.text().trim()).toBe('2 9\u204416" or 5\u20448 in, 3/7');
    });
  });

  it('letters capitals as high as it says, aligned and turned, by their pixels', async () => {
    const marks = [
      text('HHH', { at: [20, 200] }),
      text('HHH', { at: [195.9, 150], align: 'right', valign: 'top' }),
      text('HHH', { at: [100, 40], rotation: 90, bold: true, valign: 'middle', align: 'center' }),
    ];
    withPdf(await writePdf([page(marks)], INFO, FONTS), (pdf) => {
      const { width, height, gray } = pdf.raster(1, 254); // ten dots to a millimetre
      const ink = (x0: number, y0: number, x1: number, y1: number): number[] => {
        let box = [Infinity, Infinity, -Infinity, -Infinity];
        for (let y = Math.round(height - 10 * y1); y < height - 10 * y0; y++) {
          for (let x = 10 * x0; x < 10 * x1; x++) {
            if (gray[y * width + x]! > 128) continue;
            const [u, v] = [x / 10, (height - y) / 10];
            box = [Math.min(box[0]!, u), Math.min(box[1]!, v - 0.1), Math.max(box[2]!, u + 0.1), Math.max(box[3]!, v)];
          }
        }
        return box;
      };
      const [, low, , high] = ink(10, 190, 100, 230);
      expect(Math.abs(low! - 200)).toBeLessThan(0.15);
      expect(Math.abs(high! - low! - 10)).toBeLessThan(0.15);
      const right = ink(100, 130, 210, 160);
      expect(Math.abs(right[3]! - 150)).toBeLessThan(0.15);
      expect(Math.abs(right[1]! - 140)).toBeLessThan(0.15);
      expect(195.9 - right[2]!).toBeGreaterThan(0); // the white beside an H
      expect(195.9 - right[2]!).toBeLessThan(2);
      const turned = ink(80, 10, 120, 70);
      expect(Math.abs(turned[0]! - 95)).toBeLessThan(0.15);
      expect(Math.abs(turned[2]! - 105)).toBeLessThan(0.15);
      expect(Math.abs((turned[1]! + turned[3]!) / 2 - 40)).toBeLessThan(0.3);
    });
  });

  it('draws a square of 100 mm as 1181 dots of 300 to the inch', async () => {
    withPdf(await writePdf([page([square])], INFO, FONTS), (pdf) => {
      const { width, height, gray } = pdf.raster(1, 300);
      const y = Math.round(height - (70 * 300) / 25.4);
      const row = Array.from({ length: width }, (_, x) => x).filter((x) => gray[y * width + x]! < 128);
      expect(Math.abs(row.at(-1)! - row[0]! + 1 - (100.25 * 300) / 25.4)).toBeLessThanOrEqual(1);
    });
  });
});

describe('curves along an arc', () => {
  it('keep within 0.0002 mm of a radius of 300 mm, and a single one over 90 degrees would not', () => {
    const off = (span: number, curves: ReturnType<typeof arcCurves>): number => {
      let from: readonly [number, number] = [300, 0];
      let most = 0;
      for (const { first, second, to } of curves) {
        for (let k = 0; k <= 50; k++) {
          const t = k / 50;
          const at = ([0, 1] as const).map(
            (i) =>
              (1 - t) ** 3 * from[i] +
              3 * (1 - t) ** 2 * t * first[i] +
              3 * (1 - t) * t * t * second[i] +
              t ** 3 * to[i],
          );
          most = Math.max(most, Math.abs(Math.hypot(at[0]!, at[1]!) - 300));
        }
        from = to;
      }
      expect(Math.atan2(from[1], from[0])).toBeCloseTo((span * Math.PI) / 180, 9);
      return most;
    };
    expect(off(90, arcCurves([0, 0], 300, 0, 90))).toBeLessThan(2e-4);
    expect(off(-90, arcCurves([0, 0], 300, 0, -90))).toBeLessThan(2e-4);
    const handle = (4 / 3) * Math.tan(Math.PI / 8) * 300;
    expect(off(90, [{ first: [300, handle], second: [handle, 300], to: [0, 300] }])).toBeGreaterThan(0.05);
  });
});

describe('fractions', () => {
  it.each([
    ['13 3/8"', '13 3\u20448"'],
    ['1 25/32 x 1/2', '1 25\u204432 x 1\u20442'],
    ['2026/11/25', '2026/11/25'],
    ['5/4 stock', '5/4 stock'],
    ['A1/2', 'A1/2'],
    ['page 3/7', 'page 3/7'],
    ['0/2', '0/2'],
  ])('%j are set as %j', (given, set) => expect(setFractions(given)).toBe(set));
});

describe('a face out of its package', () => {
  it('has the tables that it had, and other bytes are refused', () => {
    const font = unpackWoff(FONTS.regular);
    const view = new DataView(font.buffer);
    expect(view.getUint16(4)).toBe(new DataView(FONTS.regular.buffer, FONTS.regular.byteOffset).getUint16(12));
    // The sum of all 32-bit words of a table is its checksum (OpenType specification); head has its own rule.
    for (let k = 0; k < view.getUint16(4); k++) {
      const row = 12 + 16 * k;
      if (view.getUint32(row) === 0x68656164) continue;
      let sum = 0;
      for (let at = 0; at < view.getUint32(row + 12); at += 4)
        sum = (sum + view.getUint32(view.getUint32(row + 8) + at)) >>> 0;
      expect(sum).toBe(view.getUint32(row + 4));
    }
    expect(() => unpackWoff(new Uint8Array(60))).toThrow('not WOFF');
  });
});
