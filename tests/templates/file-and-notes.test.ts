import type { ITextEntity } from 'dxf-parser';
import { describe, expect, it } from 'vitest';
import { parseDxf } from '../readers/dxf-parse.ts';
import { elements, parseXml } from '../readers/xml.ts';
import { DESIGNS } from '../written.ts';
import { allTemplates, CASES, writtenCase } from './cases.ts';
import { polylinesOf } from './outline-in-file.ts';

const textsOf = (dxf: string): ITextEntity[] =>
  parseDxf(dxf).entities.filter((entity): entity is ITextEntity => entity.type === 'TEXT');

/** The lines below the drawing: at the left side, smaller than the mark. */
const notesOf = (dxf: string): string[] =>
  textsOf(dxf)
    .filter((text) => text.layer === 'TEXT' && text.startPoint.x === 0 && text.textHeight === 3.5)
    .map((text) => text.text);

describe('every template file', () => {
  it('is plain ASCII in lines that end in CRLF and nothing else', async () => {
    for (const { dxf, of } of await allTemplates()) {
      expect(dxf.replace(/[ -~]|\r\n/g, ''), of).toBe('');
      expect(dxf.endsWith('\r\nEOF\r\n'), of).toBe(true);
    }
  });

  it('is in millimetres and has a record for every layer that is used, by dxf-parser', async () => {
    for (const { dxf, of } of await allTemplates()) {
      const { header, tables, entities } = parseDxf(dxf);
      expect(header['$INSUNITS'], of).toBe(4);
      expect(header['$MEASUREMENT'], of).toBe(1);
      const layers = Object.keys(tables.layer.layers);
      const used = [...new Set(entities.map((entity) => entity.layer))];
      expect(layers, of).toEqual(expect.arrayContaining(used));
      expect(used, of).toEqual(
        expect.arrayContaining(['OUTLINE', 'SAW-LINE', 'CENTER', 'REFERENCE', 'DIMENSION', 'TEXT']),
      );
    }
  });

  it('is an SVG file in true millimetres beside it, by its width and the box it shows', async () => {
    for (const { svg, of } of await allTemplates()) {
      const { width, height, viewBox } = parseXml(svg).attributes;
      const [, , wide, tall] = viewBox!.split(' ');
      expect([width, height], of).toEqual([`${wide}mm`, `${tall}mm`]);
      expect(elements(parseXml(svg)).filter((e) => e.name === 'text').length, of).toBeGreaterThan(5);
    }
  });
});

describe('the pockets on every template', () => {
  const LAYER = { mortise: 'MORTISE', bore: 'BORE', slottedHole: 'SLOT' } as const;

  it('lie on the layer of their kind; what comes from the far face and not through is hidden', async () => {
    let hidden = 0;
    for (const { dxf, pockets, of } of await allTemplates()) {
      const expected = pockets.map(({ kind, into, depth }) =>
        into[2] < -0.5 && depth !== 'through' ? 'HIDDEN' : LAYER[kind],
      );
      const drawn = ['MORTISE', 'BORE', 'SLOT', 'HIDDEN'].flatMap((layer) => polylinesOf(dxf, layer).map(() => layer));
      expect(drawn.sort(), of).toEqual([...expected].sort());
      hidden += expected.filter((layer) => layer === 'HIDDEN').length;
    }
    expect(hidden).toBeGreaterThan(10);
  });
});

describe('the words on every template', () => {
  it('name piece, design, revision and date, and the mark stands large on the face', async () => {
    for (const one of CASES) {
      const { title, revision, date } = DESIGNS[one.design];
      for (const { dxf, marks, path } of (await writtenCase(one)).templates) {
        const notes = notesOf(dxf);
        expect(notes[0]).toBe(`${title}, revision ${revision}, ${date}`);
        expect(notes[1]!.startsWith(`${marks}  `), path).toBe(true);
        expect(notes.at(-1)).toBe('saw outside the dash-dot line, then trim to the finished line');
        const large = textsOf(dxf).filter((text) => text.text === marks);
        expect(large).toHaveLength(1);
        expect(large[0]!.textHeight, path).toBeGreaterThanOrEqual(5);
      }
    }
  });

  it('explain every letter that stands on the face, as often as it stands there', async () => {
    for (const { dxf, of } of await allTemplates()) {
      const explained = notesOf(dxf).flatMap((note) => {
        const [, letter, times] = /^([a-z]): (?:(\d+) x )?/.exec(note) ?? [];
        return letter ? [[letter, Number(times ?? 1)] as const] : [];
      });
      const letters = textsOf(dxf).filter((text) => /^[a-z]$/.test(text.text));
      const counted = explained.map(([letter]) => [letter, letters.filter((t) => t.text === letter).length]);
      expect(counted, of).toEqual(explained);
      expect(letters.length, of).toBe(explained.reduce((sum, [, times]) => sum + times, 0));
    }
  });

  it('of the bearer, once whole', async () => {
    const { templates } = await writtenCase(CASES[0]!);
    expect(notesOf(templates[0]!.dxf)).toMatchInlineSnapshot(`
      [
        "Reading-room table, revision A, 2026-11-25",
        "B1 B2  bearer, 2 alike  frame-a/bearer, frame-b/bearer",
        "finished line, seen on the reference face; thickness 2 1/4" (57.2); wood: black cherry",
        "slope 3.22 deg, 9/16" in 10"",
        "relief at the ridge 1" (25.4) wide, 1/32" (0.8) deep",
        "a: 2 x mortise 1/2" (12.7) x 1 25/32" (45.2), 1 1/2" (38.1) deep, its middle 1 1/8" (28.6) from this face",
        "b: 2 x counterbore slot 35/64" (13.7) x 51/64" (20.2), 1 57/64" (47.9) deep, its middle 1 1/8" (28.6) from this face",
        "c: 2 x clearance slot 3/16" (4.8) x 29/64" (11.3), right through, its middle 1 1/8" (28.6) from this face",
        "d: 2 x counterbore slot 35/64" (13.7) x 45/64" (17.7), 1 33/64" (38.7) deep, its middle 1 1/8" (28.6) from this face",
        "e: 2 x clearance slot 3/16" (4.8) x 11/32" (8.9), right through, its middle 1 1/8" (28.6) from this face",
        "f: counterbore hole 35/64" (13.7) across, 1 5/32" (29.4) deep, its middle 1 1/8" (28.6) from this face",
        "g: clearance hole 13/64" (5.2) across, right through, its middle 1 1/8" (28.6) from this face",
        "2 1/4" (57.2) is thicker than the 2" (50.8) bit: rout along the template from this face to past the middle,",
        "turn the wood over, take the template off, and flush-trim with the bearing on the routed land",
        "saw outside the dash-dot line, then trim to the finished line",
      ]
    `);
  });

  it('of a metric post, once whole', async () => {
    const { templates } = await writtenCase(CASES[1]!);
    expect(notesOf(templates.find((t) => t.mark === 'P1')!.dxf)).toMatchInlineSnapshot(`
      [
        "Boathouse meeting table, revision A, 2026-11-25",
        "P1 P3  post, 2 alike  frame-a/post-1, frame-b/post-1",
        "finished line, seen on the reference face; thickness 70 mm; wood: white oak",
        "slope 2.62 deg, 4.58 in 100",
        "a: 2 x mortise 12 mm x 61 mm, 35 mm deep, its middle 35 mm from this face",
        "b: mortise 12 mm x 61 mm, 35 mm deep, from the far face",
        "70 mm is thicker than the 50.8 mm bit: rout along the template from this face to past the middle,",
        "turn the wood over, take the template off, and flush-trim with the bearing on the routed land",
        "saw outside the dash-dot line, then trim to the finished line",
      ]
    `);
  });
});
