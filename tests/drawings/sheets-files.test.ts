import { describe, expect, test } from 'vitest';
import { derivedNumbers } from '../../lib/build/derived.ts';
import { drawingFiles, sheetsOf } from '../../lib/build/output-drawings.ts';
import { drawingsPdf } from '../../lib/build/output-drawings-pdf.ts';
import { explode } from '../../lib/drawing/explode.ts';
import type { Sheet } from '../../lib/drawing/sheet.ts';
import { writeDxf } from '../../lib/writers/dxf.ts';
import { readFonts } from '../../scripts/assets/fonts.ts';
import { auditDxfs } from '../readers/dxf-audit.ts';
import { dimensionsOf, parseDxf } from '../readers/dxf-parse.ts';
import { pagesOf } from '../readers/pdf-text.ts';
import { type DesignName, jobOf, NAMES } from './sheet-jobs.ts';

const valuesOf = ({ drawing }: Sheet): number[] =>
  drawing.entities.flatMap((one) => (one.kind === 'dim' ? [explode(one, drawing.style).value] : []));

const textsOf = ({ drawing }: Sheet): string[] =>
  drawing.entities.flatMap((one) => (one.kind === 'dim' ? [explode(one, drawing.style).text] : []));

describe('sheets as DXF', () => {
  const sheets = NAMES.flatMap((name) => sheetsOf(jobOf(name)));

  test('ezdxf finds nothing to mend, and measures what the model has', ({ skip }) => {
    const reports = auditDxfs(sheets.map(({ drawing }) => writeDxf(drawing)));
    if (!reports) return skip('left out: ezdxf (python3-ezdxf of Debian) is not installed');
    expect(reports.flatMap(({ errors, fixes }) => [...errors, ...fixes])).toEqual([]);
    reports.forEach(({ dims, header }, k) => {
      const values = valuesOf(sheets[k]!);
      expect(dims).toHaveLength(values.length);
      dims.forEach(({ actual, measurement, blockTexts }, d) => {
        expect(actual).toBeCloseTo(values[d]!, 6);
        expect(measurement).toBeCloseTo(values[d]!, 6);
        expect(blockTexts).toHaveLength(1);
      });
      expect(header['$INSUNITS']).toBe(4);
      expect(header['$DIMSCALE']).toBe(sheets[k]!.scale);
    });
  });

  test('dxf-parser reads millimetres and the sizes of the piece', () => {
    for (const name of NAMES) {
      const [approval] = sheetsOf(jobOf(name));
      const { length, width, height } = derivedNumbers({ ...jobOf(name), assembly: jobOf(name).nominal }).overall;
      const file = parseDxf(writeDxf(approval!.drawing));
      expect(file.header['$INSUNITS']).toBe(4);
      const measured = dimensionsOf(file).map((dim) => dim.actualMeasurement);
      for (const size of [length, width, height]) {
        expect(
          measured.filter((one) => Math.abs(one - size) < 1e-6),
          `${name}: ${size}`,
        ).toHaveLength(1);
      }
    }
  });

  test('a sheet is a DXF and an SVG, the paper at its size', () => {
    const files = drawingFiles(jobOf('reading-table'));
    expect([...files.keys()].slice(0, 2)).toEqual(['drawings/approval.dxf', 'drawings/approval.svg']);
    const svg = new TextDecoder().decode(files.get('drawings/approval.svg'));
    expect(svg).toContain('width="431.8mm" height="279.4mm" viewBox="0 -279.4 431.8 279.4"');
    expect(svg).toContain('29\u00b9\u2044\u2082&quot;');
  });
});

/** Lengths of a page, as pdftotext reads them: `13 3/8"`, or a plain number. */
const LENGTH = /\d+ \d+\u2044\d+"|\d+\u2044\d+"|\d+"|\d+(?:\.\d+)?/g;

const count = (all: readonly string[], one: string): number => all.filter((other) => other === one).length;

describe('sheets as PDF', () => {
  const made = new Map<DesignName, Promise<Uint8Array>>();
  const pdf = (name: DesignName): Promise<Uint8Array> => {
    const before = made.get(name) ?? drawingsPdf(jobOf(name), readFonts()).then((files) => files.get('drawings.pdf')!);
    made.set(name, before);
    return before;
  };

  test.each(NAMES)(
    '%s: every dimension of every sheet is read on its page as often as it stands there',
    async (name) => {
      const pages = pagesOf(await pdf(name));
      if (!pages) return; // poppler is not installed here
      const sheets = sheetsOf(jobOf(name));
      expect(pages).toHaveLength(sheets.length);
      sheets.forEach((sheet, k) => {
        const read = pages[k]!.match(LENGTH) ?? [];
        const texts = textsOf(sheet).flatMap((text) => text.replaceAll('/', '\u2044').match(LENGTH)?.[0] ?? []);
        for (const text of texts) expect(count(read, text), text).toBeGreaterThanOrEqual(count(texts, text));
      });
    },
  );

  // What the client agrees to, from the model: sizes over all, thickness on the center line and at the edge.
  test.each([
    ['reading-table', ['84"', '40"', '29 1\u20442"', '2 1\u20444"', '1 1\u20448"']],
    ['meeting-table', ['2400', '960', '740', '50', '28']],
    ['study-table', ['66"', '30"', '29"', '2"', '1"']],
    ['reading-stool', ['18"', '10"', '16 1\u20444"', '1 1\u20444"']],
  ] as const)('%s: each size is on the approval sheet once', async (name, sizes) => {
    const pages = pagesOf(await pdf(name));
    const read = pages ? (pages[0]!.match(LENGTH) ?? []) : sizes;
    const dims = textsOf(sheetsOf(jobOf(name))[0]!).map((text) => text.replace('/', '\u2044'));
    for (const size of sizes) {
      expect(count(read, size), size).toBeGreaterThanOrEqual(1);
      // Overhangs may be as long as something is thick.
      if (size.length > 2) expect(count(dims, size), size).toBe(1);
    }
  });

  test('the same job gives the same bytes', async () => {
    const again = await drawingsPdf(jobOf('reading-stool'), readFonts());
    expect(again.get('drawings.pdf')).toEqual(await pdf('reading-stool'));
  });
});
