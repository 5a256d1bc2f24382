import { describe, expect, test } from 'vitest';
import { storyStickFiles } from '../../lib/build/output-story-stick.ts';
import { storySticks } from '../../lib/derive/drawings/sheets/story-stick.ts';
import { stickRoll } from '../../lib/derive/drawings/sheets/story-stick-pages.ts';
import { stickPieces } from '../../lib/derive/drawings/sheets/story-stick-pieces.ts';
import { storyStickSheets } from '../../lib/derive/drawings/sheets/story-stick-sheet.ts';
import { OVERLAP } from '../../lib/drawing/tile-grid.ts';
import { partOf } from '../../lib/model/assembly.ts';
import type { Mortise } from '../../lib/model/feature.ts';
import { writeDxf } from '../../lib/writers/dxf.ts';
import { writePdf } from '../../lib/writers/pdf.ts';
import { readFonts } from '../../scripts/assets/fonts.ts';
import { auditDxfs } from '../readers/dxf-audit.ts';
import { dimensionsOf, parseDxf } from '../readers/dxf-parse.ts';
import { hasPdfTools, type PdfReader, type Raster, withPdf } from '../readers/pdf-tools.ts';
import { DPI, findCrosses, inkMiddle, PX } from '../templates/pixels.ts';
import { collisions } from './collisions.ts';
import { sheetsBy } from './one-sheet.ts';
import { type DesignName, jobOf, NAMES } from './sheet-jobs.ts';

const TABLES = NAMES.filter((name) => name !== 'reading-stool');

/** All slots of the edge joints of a top, straight from the model: strips stand in the frame of the top. */
function slotsOf(name: DesignName): Mortise[] {
  const { assembly } = jobOf(name);
  return assembly.joints
    .filter(({ kind, id }) => kind === 'edge' && id.startsWith('top/'))
    .flatMap(({ sides }) => sides)
    .flatMap(({ part, features }) => partOf(assembly, part).features.filter((f) => features.includes(f.id)))
    .filter((f): f is Mortise => f.kind === 'mortise');
}

const round = (mm: number): number => Math.round(mm * 1e6) / 1e6;
const distinct = (values: readonly number[]): number[] => [...new Set(values.map(round))].sort((a, b) => a - b);

describe.each(TABLES)('story stick: %s', (name) => {
  const [sheet, ...more] = sheetsBy(storyStickSheets, jobOf(name));
  const slots = slotsOf(name);
  const { length } = partOf(jobOf(name).assembly, 'top').finished;

  test('one stick for all joints', () => expect(more).toEqual([]));

  test('group 42 of its dimensions: the slots of the model, from the finished ends', () => {
    const measured = distinct(dimensionsOf(parseDxf(writeDxf(sheet!.drawing))).map((dim) => dim.actualMeasurement));
    const tight = slots.filter(({ play }) => play === 0);
    const starts = tight.map(({ at, length: long }) => at[0] - long / 2);
    const ends = tight.map(({ at, length: long }) => at[0] + long / 2);
    const wanted = [
      ...distinct(slots.map(({ at }) => at[0])),
      length,
      Math.min(...starts),
      length - Math.max(...ends),
      Math.max(...ends) - Math.min(...starts),
      slots[0]!.at[2],
    ];
    for (const mm of distinct(wanted)) expect(measured, `${mm}`).toContain(mm);
    expect(measured).toHaveLength(distinct(wanted).length + 1); // and the thickness of the joint
  });

  test('long slots are longer by their play, both ends alike', () => {
    const [stick] = storySticks(jobOf(name).assembly);
    const play = Math.max(...slots.map((slot) => slot.play));
    expect(stick!.play).toBeCloseTo(play, 9);
    for (const { tight, long } of stick!.slots) {
      expect(tight[0] - long[0]).toBeCloseTo(play / 2, 9);
      expect(long[1] - tight[1]).toBeCloseTo(play / 2, 9);
    }
    expect(stick!.slots.length * stick!.joints.length * 2).toBe(slots.length);
  });

  test('no lettering stands on another, or on a line, on small paper neither', () => {
    expect(collisions(sheet!.drawing)).toEqual([]);
    for (const paper of ['A', 'A4'] as const) {
      for (const one of sheetsBy(storyStickSheets, jobOf(name), paper)) expect(collisions(one.drawing)).toEqual([]);
    }
  });
});

test('ezdxf finds nothing to mend', ({ skip }) => {
  const reports = auditDxfs(TABLES.map((name) => writeDxf(sheetsBy(storyStickSheets, jobOf(name))[0]!.drawing)));
  if (!reports) return skip('left out: ezdxf (python3-ezdxf of Debian) is not installed');
  expect(reports.flatMap(({ errors, fixes }) => [...errors, ...fixes])).toEqual([]);
});

test('a top without tenons has no stick', async () => {
  expect(sheetsBy(storyStickSheets, jobOf('reading-stool'))).toEqual([]);
  expect((await storyStickFiles(jobOf('reading-stool'), readFonts())).size).toBe(0);
  expect(sheetsBy(storyStickSheets, jobOf('reading-table', ['edgeJoint.tenons=false']))).toEqual([]);
});

describe('pieces of a stick', () => {
  test('cover it, overlap alike, are no longer than the room, and keep seams off slots', () => {
    const rooms = Array.from({ length: 9 }, (_, k) => [80 + 240 * k, 150 + 240 * k] as const);
    const pieces = stickPieces(2133.6, rooms, 254);
    expect(pieces[0]![0]).toBe(0);
    expect(pieces.at(-1)![1]).toBe(2133.6);
    pieces.forEach(([from, to], k) => {
      expect(to - from).toBeLessThanOrEqual(254 + 1e-9);
      const next = pieces[k + 1];
      if (!next) return;
      expect(to - next[0]).toBeCloseTo(OVERLAP, 9);
      expect(rooms.filter(([a, b]) => a < to && b > next[0])).toEqual([]);
    });
  });
});

interface Line {
  readonly number: number;
  /** Pixels: across to the line, and up to the middle of its figure. */
  readonly x: number;
}

/** Where the line of each slot of a page is, found from its figure; only in rolls all stand beside each other. */
function linesOn(pdf: PdfReader, page: number, raster: Raster): Line[] {
  const scale = DPI / 72;
  return pdf.words(page).flatMap(({ text, left, bottom }): Line[] => {
    const number = /^(\d+):$/.exec(text)?.[1];
    if (number === undefined) return [];
    // The line stands 1.5 mm before its figure; it is looked for above the boxes, clear of all lettering.
    const around = [Math.round(left * scale - 1.5 * PX), 0] as const;
    const low = Math.round(bottom * scale);
    const x = inkMiddle(raster, 'x', around, 6, low + Math.round(9 * PX), low + Math.round(12 * PX));
    return [{ number: Number(number), x }];
  });
}

/** The left end of the strip: the leftmost ink in the rows of a page, where only the strip has any. */
function endOf(raster: Raster, pdf: PdfReader): number {
  const word = pdf.words(1).find(({ text }) => text === 'reference')!;
  const scale = DPI / 72;
  const around = [Math.round(word.left * scale - 3 * PX), 0] as const;
  const low = Math.round(word.bottom * scale);
  return inkMiddle(raster, 'x', around, 12, low + Math.round(4 * PX), low + Math.round(8 * PX));
}

describe('the stick to print', () => {
  test.each(TABLES)('%s, on a roll: every line is where its slot is, to 0.1 mm', async (name) => {
    if (!hasPdfTools()) return;
    const files = await storyStickFiles(jobOf(name), readFonts());
    const middles = distinct(slotsOf(name).map(({ at }) => at[0]));
    withPdf(files.get('story-stick-roll.pdf')!, (pdf) => {
      const raster = pdf.raster(1, DPI);
      const end = endOf(raster, pdf);
      const lines = linesOn(pdf, 1, raster);
      expect(lines.map(({ number }) => number).sort((a, b) => a - b)).toEqual(middles.map((_, k) => k + 1));
      for (const { number, x } of lines) {
        const off = (x - end) / PX - middles[number - 1]!;
        expect(Math.abs(off), `slot ${number} is off by ${off} mm`).toBeLessThan(0.1);
      }
    });
  });

  test('on office paper: lying, every figure once, print scaling off, joined by crosses', async () => {
    if (!hasPdfTools()) return;
    const files = await storyStickFiles(jobOf('reading-table'), readFonts());
    const papers = { letter: [792, 612], a4: [841.89, 595.28] } as const;
    for (const [paper, size] of Object.entries(papers)) {
      withPdf(files.get(`story-stick-${paper}.pdf`)!, (pdf) => {
        expect(pdf.faults).toBe('');
        for (const found of pdf.sizes) {
          expect(found[0]).toBeCloseTo(size[0], 1);
          expect(found[1]).toBeCloseTo(size[1], 1);
        }
        const words = pdf.sizes.flatMap((_, k) => pdf.words(k + 1).map(({ text }) => text));
        // Not "1/4", which would be set as a quarter.
        pdf.sizes.forEach((_, k) => {
          const head = pdf.words(k + 1).map(({ text }) => text);
          expect(head.join(' ')).toContain(`Story stick, ${k + 1} of ${pdf.sizes.length}`);
        });
        for (let n = 1; n <= 9; n++) expect(words.filter((text) => text === `${n}:`)).toHaveLength(1);
        expect(pdf.objects()).toContain('/PrintScaling /None');
      });
    }
  });

  test('on letter paper: from slot to slot by way of their cross, to 0.1 mm', async () => {
    if (!hasPdfTools()) return;
    const files = await storyStickFiles(jobOf('reading-table'), readFonts());
    const [first, second] = distinct(slotsOf('reading-table').map(({ at }) => at[0]));
    withPdf(files.get('story-stick-letter.pdf')!, (pdf) => {
      const raster = pdf.raster(1, DPI);
      const lines = linesOn(pdf, 1, raster);
      const shared = findCrosses(raster, pdf.words(1)).filter(({ number }) => number === '1');
      expect(shared).toHaveLength(2);
      const [upper, lower] = shared.sort((a, b) => a.at[1] - b.at[1]);
      const xOf = (number: number): number => lines.find((line) => line.number === number)!.x;
      const way = (upper!.at[0] - xOf(1) + xOf(2) - lower!.at[0]) / PX;
      expect(Math.abs(way - (second! - first!)), `${way} mm`).toBeLessThan(0.1);
    });
  });

  test('a line that is 0.2 mm off is seen', async () => {
    if (!hasPdfTools()) return;
    const { assembly } = jobOf('reading-table');
    const [stick] = storySticks(assembly);
    const planted = {
      ...stick!,
      slots: stick!.slots.map((slot, k) => (k === 4 ? { ...slot, middle: slot.middle + 0.2 } : slot)),
    };
    const heading = { title: 'planted', revision: 'A', date: '2026-01-01', units: 'in' } as const;
    const bytes = await writePdf([stickRoll(planted, heading)], { title: 'planted', date: '2026-01-01' }, readFonts());
    withPdf(bytes, (pdf) => {
      const raster = pdf.raster(1, DPI);
      const end = endOf(raster, pdf);
      const off = linesOn(pdf, 1, raster).filter(
        ({ number, x }) => Math.abs((x - end) / PX - stick!.slots[number - 1]!.middle) > 0.1,
      );
      expect(off.map(({ number }) => number)).toEqual([5]);
    });
  });
});
