import { beforeAll, describe, expect, it } from 'vitest';
import { expectPrinted, INCH } from './printed.ts';
import { csvRows } from './readers/csv.ts';
import { dimensionsOf, parseDxf } from './readers/dxf-parse.ts';
import { heightsAt, meshArea, meshVolume, readStl, type Triangle } from './readers/stl.ts';
import { type Written, written } from './written.ts';

// The figures are those of the worked example of the job: a top 84 x 40 in, 2 1/4 in thick on the center line and 1 1/8 in
// at the long edges, in black cherry, on two bearer frames. Here they are taken out of the written files.

const SQUARE = { 'top.showEdge': 'square', 'top.undersideEdge': 'square' };

interface Bore {
  readonly kind: string;
  readonly diameter: number;
  readonly depth: number;
}

let square: Written;
let whole: readonly Triangle[];
let top: readonly Triangle[];
let pilots: readonly Bore[];

const partOf = (build: Written, id: string) =>
  build.json('model.json').assembly.parts.find((part: { id: string }) => part.id === id);

beforeAll(async () => {
  square = await written('reading-table', SQUARE, ['model', 'lists', 'findings', 'stl', 'dxf']);
  whole = readStl(square.bytes('solids/assembly-mm.stl'));
  top = readStl(square.bytes('solids/t-top-mm.stl'));
  pilots = partOf(square, 'top').features.filter((f: Bore) => f.kind === 'bore');
});

/** The STL writer draws corners to a grid of about this, mm. */
const GRID = 0.01;

/** Free of frames. */
const FREE = 3 * INCH;

describe('the wedge, sampled on the mesh of the whole table as it stands', () => {
  const rows = [
    [0, '2.250', '27.250'],
    [5, '1.969', undefined],
    [8, '1.800', '27.700'],
    [10, '1.688', '27.813'],
    [13, '1.519', undefined],
    [15, '1.406', '28.094'],
    [20, '1.125', '28.375'],
  ] as const;

  it.each(rows)('%s in from the center line it is as thick and as high as printed', (x, thick, height) => {
    for (const side of [-1, 1]) {
      const y = side * (x * INCH - (x === 20 ? 1e-3 : 0));
      const heights = heightsAt(whole, FREE, y);
      expect(heights).toHaveLength(2);
      const [under, show] = heights.map((z) => z / INCH) as [number, number];
      expect(Math.abs(show - 29.5) * INCH).toBeLessThan(GRID);
      expect(Math.abs(show - under - (2.25 - 0.05625 * x)) * INCH).toBeLessThan(GRID);
      expectPrinted(show - under, thick, `thickness at ${side * x}`, GRID / INCH);
      if (height) expectPrinted(under, height, `underside at ${side * x}`, GRID / INCH);
    }
  });

  it('slopes by 0.05625, 9/16 in 10, 3.2195 degrees on both sides', () => {
    for (const side of [-1, 1]) {
      const [inner, outer] = [1, 19].map((x) => heightsAt(whole, FREE, side * x * INCH)[0]!) as [number, number];
      const run = 18 * INCH;
      const slope = (outer - inner) / run;
      expect(Math.abs(slope - 0.05625)).toBeLessThan(GRID / run);
      expect(Math.abs(slope * 10 - 9 / 16)).toBeLessThan((10 * GRID) / run);
      expect(Math.abs((Math.atan(slope) * 180) / Math.PI - 3.2195)).toBeLessThan(0.002);
    }
  });
});

describe('the finished top', () => {
  const pilotVolume = (): number => pilots.reduce((sum, p) => sum + (Math.PI / 4) * p.diameter ** 2 * p.depth, 0);

  it('holds 5,670 cubic inches, 39.375 board feet, in the STL file and in model.json', () => {
    expect(pilots).toHaveLength(10);
    const inches = (meshVolume(top) + pilotVolume()) / INCH ** 3;
    expect(Math.abs(inches - 5670)).toBeLessThan(0.2);
    const { volume, boardFeet } = square.json('model.json').derived.glueUps.top;
    expect(Math.abs((volume + pilotVolume()) / INCH ** 3 - 5670)).toBeLessThan(0.02);
    expectPrinted(boardFeet + pilotVolume() / (144 * INCH ** 3), '39.375', 'board feet');
  });

  it('weighs 52.0 kg in cherry and 70.8 kg in white oak', async () => {
    expectPrinted(square.json('model.json').derived.glueUps.top.mass, '52.0', 'kg of cherry');
    const oak = await written('reading-table', { ...SQUARE, 'top.wood': 'white-oak' }, ['model']);
    expectPrinted(oak.json('model.json').derived.glueUps.top.mass, '70.8', 'kg of white oak');
  });

  it('has 48.95 square feet of surface; with 20 of base two coats take 0.534 L, with spare 0.614 L', () => {
    const walls = pilots.reduce((sum, p) => sum + Math.PI * p.diameter * p.depth, 0);
    const feet = (meshArea(top) - walls) / (12 * INCH) ** 2;
    expectPrinted(feet, '48.95', 'square feet');
    const { area, coats, liters } = square.json('bill-of-materials.json').finish;
    const squareMeters = (feet + 20) * (0.3048 * 0.3048);
    expectPrinted(squareMeters, '6.41', 'square meters');
    expect(coats).toBe(2);
    const litersFor = (m2: number): number => (liters / (area / 1e6)) * m2;
    expectPrinted(litersFor(squareMeters), '0.614', 'liters with spare');
    expectPrinted(litersFor(squareMeters) / 1.15, '0.534', 'liters');
  });

  it('is glued along 1,039.5 square inches of edges', () => {
    const joints: { kind: string; glueArea: number }[] = square.json('model.json').assembly.joints;
    const edges = joints.filter((joint) => joint.kind === 'edge');
    expect(edges).toHaveLength(7);
    expectPrinted(edges.reduce((sum, joint) => sum + joint.glueArea, 0) / INCH ** 2, '1039.5', 'square inches');
  });
});

describe('the bearer frame', () => {
  it('has its heights on the mesh: foot 3, bearer 24.594 over the floor, then the underside', () => {
    const across = 11.9;
    const heights = heightsAt(whole, 14 * INCH, across * INCH).map((z) => z / INCH);
    expect(heights).toHaveLength(6);
    expectPrinted(heights[0]!, '0.000', 'floor');
    expectPrinted(heights[1]!, '0.250', 'pad');
    expectPrinted(heights[2]!, '3.000', 'foot');
    expectPrinted(heights[3]!, '24.594', 'bearer base');
    expectPrinted(heights[4]!, '27.919', 'underside at 11.9'); // 27.25 + 0.05625 x 11.9
  });

  it('has the V of the bearer in the DXF file: 18/64, 36/64 and 54/64 over 2.656', () => {
    const file = parseDxf(square.text('templates/b1-frame-a-bearer.dxf'));
    const heights = new Map(dimensionsOf(file).map((dim) => [dim.text, dim.actualMeasurement]));
    const depth = heights.get('2 21/32" (67.5)')!;
    expectPrinted(depth / INCH, '2.656', 'depth on the center line');
    const outline = file.entities.find((e) => e.type === 'LWPOLYLINE' && e.layer === 'OUTLINE') as unknown as {
      vertices: { x: number; y: number }[];
    };
    const rise = (x: number): number => {
      const at = 15 * INCH + x * INCH;
      const upper = outline.vertices.flatMap((a, i, all) => {
        const b = all[(i + 1) % all.length]!;
        if (!(Math.min(a.x, b.x) <= at && at <= Math.max(a.x, b.x)) || a.x === b.x) return [];
        return [a.y + ((b.y - a.y) * (at - a.x)) / (b.x - a.x)];
      });
      return (Math.max(...upper) - depth) / INCH;
    };
    for (const side of [-1, 1]) {
      expect(rise(side * 5)).toBeCloseTo(18 / 64, 6);
      expect(rise(side * 10)).toBeCloseTo(36 / 64, 6);
      expect(rise(side * 14.999)).toBeCloseTo((54 / 64 / 15) * 14.999, 6);
    }
  });

  it('has the angles of the V in the DXF file', () => {
    const file = parseDxf(square.text('templates/b1-frame-a-bearer.dxf'));
    const degrees = dimensionsOf(file)
      .filter((dim) => (dim.dimensionType & 7) === 2)
      .map((dim) => (dim.actualMeasurement * 180) / Math.PI)
      .sort((a, b) => a - b);
    expect(degrees).toHaveLength(3);
    expectPrinted(degrees[0]!, '3.2195', 'slope');
    expectPrinted(degrees[1]!, '3.2195', 'slope');
    expectPrinted(degrees[2]!, '173.561', 'V');
    expect(square.text('templates/b1-frame-a-bearer.dxf')).toContain('slope 3.22 deg, 9/16" in 10"');
  });

  it('has slots of 0.349 and 0.446 in for the screws at 6.5 and 13, in model.json and in the DXF file', () => {
    const holes: { kind: string; purpose: string; length: number }[] = partOf(square, 'frame-a/bearer').features;
    const slots = holes.filter((f) => f.kind === 'slottedHole' && f.purpose === 'clearance').map((f) => f.length);
    const wide = parseDxf(square.text('templates/b1-frame-a-bearer.dxf'))
      .entities.filter((e) => e.type === 'LWPOLYLINE' && e.layer === 'SLOT')
      .map((e) => (e as unknown as { vertices: { x: number }[] }).vertices.map((v) => v.x))
      .map((xs) => Math.max(...xs) - Math.min(...xs));
    for (const lengths of [slots, wide.filter((length) => length < 12)]) {
      expect(lengths).toHaveLength(4);
      const [a, b, c, d] = [...lengths].sort((p, q) => p - q).map((mm) => mm / INCH) as [
        number,
        number,
        number,
        number,
      ];
      for (const inner of [a, b]) expectPrinted(inner, '0.349', 'slot at 6.5 in');
      for (const outer of [c, d]) expectPrinted(outer, '0.446', 'slot at 13 in');
    }
  });

  it('lets screws reach 1.875, 1.509 and 1.144 in at 0, 6.5 and 13, by findings.json', () => {
    const covers: { check: string; where: string; value: number; limit: number }[] = square
      .json('findings.json')
      .findings.filter((f: { check: string }) => f.check === 'screw cover');
    const reach = (n: number): number => {
      const found = covers.find((f) => f.where === `frame-a/fixing-${n}`)!;
      return 1 + (found.value - found.limit) / INCH;
    };
    expectPrinted(reach(3), '1.875', 'on the center line');
    expectPrinted(reach(2), '1.509', 'at 6.5');
    expectPrinted(reach(5), '1.144', 'at 13');
  });
});

describe('the cut list, read by the grammar of RFC 4180', () => {
  const list = () => csvRows(square.text('cut-list.csv'));

  it('has posts 21.594 in, 21 19/32, between the shoulders', () => {
    const [post] = list().filter((row) => row['name'] === 'post');
    expect(post!['finished length (in)']).toBe('21 19/32');
    expectPrinted(Number(post!['finished length (mm)']) / INCH, '21.594', 'post');
  });

  it('buys 55.4 board feet net for the strips: 10 in of 12/4, 10 of 10/4, 20 of 8/4', () => {
    const strips = list().filter((row) => row['name'] === 'strip');
    expectPrinted(
      strips.reduce((sum, row) => sum + Number(row['board feet']), 0),
      '55.4',
      'board feet',
    );
    const widths = new Map<string, number>();
    for (const row of strips) {
      const width = Number(row['quantity']) * Number(row['finished width (in)']);
      widths.set(row['lumber']!, (widths.get(row['lumber']!) ?? 0) + width);
    }
    expect(Object.fromEntries(widths)).toEqual({ '12/4': 10, '10/4': 10, '8/4': 20 });
  });
});
