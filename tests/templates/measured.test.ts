import { describe, expect, it } from 'vitest';
import { bitLines } from '../../lib/derive/templates/bit-lines.ts';
import { offsetsOf } from '../../lib/derive/templates/offsets.ts';
import { outsideByModel } from '../../lib/derive/templates/outline.ts';
import { parallelOutline } from '../../lib/derive/templates/parallel-outline.ts';
import { templates } from '../../lib/derive/templates/templates.ts';
import type { Surface } from '../../lib/geometry/surface.ts';
import { trestleTable } from '../../lib/tables/trestle/trestle-table.ts';
import type { TrestleValues } from '../../lib/tables/trestle/values.ts';
import { DESIGNS, valuesOf } from '../written.ts';

const table = DESIGNS['reading-table'];
const values = valuesOf(table) as unknown as TrestleValues;

/** Depth of the underside below the show face, mm: the wedge as designed, left half `left` mm deeper and tilted along. */
const measured = (left: number, tilt: number): Surface => ({
  take: 'lowest',
  planes: [
    { name: 'left', a: tilt, b: -0.05625, c: 57.15 + left },
    { name: 'right', a: tilt, b: 0.05625, c: 57.15 },
  ],
});

const nominal = trestleTable(values);
const made = (underside: Surface) => templates(trestleTable(values, table.title, { underside }), table, nominal);

const textsOf = (drawing: { entities: readonly { kind: string; text?: string | undefined }[] }): string =>
  drawing.entities.flatMap((e) => (e.kind === 'text' ? [e.text!] : [])).join('\n');

describe('offsets of a bearer', () => {
  it('are the heights of the V as designed: 88.9 mm at the ends, 0.05625 a millimetre', () => {
    const [template] = templates(nominal, table);
    const { stations, alike, lines } = offsetsOf(template!.face.outlines, 'in');
    expect([alike, lines]).toEqual([true, ['near']]);
    expect(stations.map(({ distance }) => Math.round(distance * 100) / 100)).toEqual([
      0, 12.7, 50.8, 101.6, 152.4, 203.2, 254, 304.8, 355.6, 381,
    ]);
    for (const { distance, left, right } of stations) {
      expect(left.near).toBeCloseTo(88.9 - 0.05625 * (381 - distance), 6);
      expect(right.near).toBeCloseTo(88.9 - 0.05625 * (381 - distance), 6);
    }
    expect(stations.map(({ words }) => words.join(', '))).toEqual([
      'center line, ridge',
      'edge of the relief',
      '',
      '',
      '',
      '',
      '',
      '',
      '',
      'end',
    ]);
  });

  it('come every 50 mm for a metric shop', () => {
    const [template] = templates(nominal, { ...table, units: 'mm' });
    const at = offsetsOf(template!.face.outlines, 'mm').stations.map(({ distance }) => Math.round(distance * 10) / 10);
    expect(at).toEqual([0, 12.7, 50, 100, 150, 200, 250, 300, 350, 381]);
  });
});

describe('templates after the underside was measured', () => {
  it('are one for both frames and say nothing of it when it is as designed', () => {
    const [template, ...others] = made(measured(0, 0));
    expect(others).toEqual([]);
    expect(template!.face.parts.map(({ mark }) => mark)).toEqual(['B1', 'B2']);
    expect(template!.face.outlines.designed).toBeUndefined();
    expect(textsOf(template!.drawing)).not.toContain('measured');
  });

  it('are two when the halves differ, each with what it was designed as beside what it is', () => {
    const both = made(measured(1.5, 0));
    expect(both.map(({ face }) => face.parts.map(({ mark }) => mark))).toEqual([['B1'], ['B2']]);
    for (const { face, drawing } of both) {
      const { lines, stations, alike } = offsetsOf(face.outlines, 'in');
      expect([lines, alike]).toEqual([['near', 'designed'], false]);
      const end = stations.at(-1)!;
      const changes = [end.left, end.right].map(({ near, designed }) => near! - designed!);
      expect(Math.abs(changes[0]! - changes[1]!)).toBeCloseTo(1.5, 6);
      expect(textsOf(drawing)).toContain('follows the underside as measured');
      expect(textsOf(drawing)).toContain('left, as designed');
    }
    // The thick half is on the left of one frame and on the right of the other.
    const hand = both.map(({ face }) => {
      const { left, right } = offsetsOf(face.outlines, 'in').stations.at(-1)!;
      return Math.sign(left.near! - right.near!);
    });
    expect(hand[0]).toBe(-hand[1]!);
  });

  it('draw the designed edge only where it would not blur the finished line', () => {
    const layers = (left: number): string[] =>
      made(measured(left, 0))[0]!.drawing.entities.map(({ layer }) => layer.name);
    expect(layers(3)).toContain('NEIGHBOR');
    expect(layers(0.4)).not.toContain('NEIGHBOR');
  });

  it('keep the saw line 1/8 in outside both faces when the underside slopes along the table', () => {
    for (const { face } of made(measured(0, 0.02))) {
      const { near, far } = face.outlines;
      const heightOf = (outline: readonly { x: number; y: number; bulge?: number }[], x: number): number =>
        Math.max(
          ...outline.flatMap((a, i) => {
            const b = outline[(i + 1) % outline.length]!;
            if (a.x === b.x || (x - a.x) * (x - b.x) > 0) return [];
            return [a.y + ((b.y - a.y) * (x - a.x)) / (b.x - a.x)];
          }),
        );
      const slope = Math.hypot(1, 0.05625);
      let differ = 0;
      for (let x = 30; x < 735; x += 5) {
        if (Math.abs(x - 381) < 25) continue;
        const faces = [heightOf(near, x), heightOf(far!, x)];
        differ = Math.max(differ, Math.abs(faces[0]! - faces[1]!));
        expect(heightOf(face.saw, x) - Math.max(...faces)).toBeCloseTo(3.175 * slope, 4);
      }
      expect(differ).toBeCloseTo(0.02 * 57.15, 4);
      expect(offsetsOf(face.outlines, 'in').lines).toContain('far');
    }
  });
});

describe('the line outside an outline', () => {
  it('is what makerjs finds for rounds and a V', () => {
    const plain = valuesOf(table, { 'bearer.reliefDepth': '0 in' }) as unknown as TrestleValues;
    for (const { face } of templates(trestleTable(plain), table)) {
      const own = parallelOutline(face.outlines.near, 3.175)!;
      const other = outsideByModel(face.outlines.near, 3.175);
      for (const p of other) expect(Math.min(...own.map((q) => Math.hypot(p.x - q.x, p.y - q.y)))).toBeLessThan(1e-5);
    }
  });

  it('is left to makerjs where a side would vanish', () => {
    const notch = [
      [0, 0],
      [100, 0],
      [100, 50],
      [53, 50],
      [53, 40],
      [47, 40],
      [47, 50],
      [0, 50],
    ] as const;
    const outline = notch.map(([x, y]) => ({ x, y }));
    expect(parallelOutline(outline, 2)).toHaveLength(8);
    expect(parallelOutline(outline, 4)).toBeUndefined();
  });
});

describe('the words on wood and bit', () => {
  it.each([
    [50, 50.8, 0, ''],
    [57.15, 50.8, 2, 'flush-trim with the bearing on the routed land'],
    [110, 50.8, 2, 'plane away the 11.6 mm that is left in the middle'],
  ])('%f mm of wood and a bit of %f mm: %i lines', (thickness, bit, count, words) => {
    const lines = bitLines(thickness, bit, 'mm');
    expect(lines).toHaveLength(count);
    expect(lines.join(' ')).toContain(words);
  });
});
