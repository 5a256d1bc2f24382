import makerjs from 'makerjs';
import { describe, expect, it } from 'vitest';
import { allTemplates, type PointInFile } from './cases.ts';
import { type Corner, outlineOf } from './outline-in-file.ts';

/** 1/8 in. */
const MARGIN = 3.175;

/** mm from one sample to the next. */
const STEP = 5;

type Pt = readonly [number, number];

/** Center, radius, start and sweep of a side with a bulge: the tangent of a quarter of the sweep. */
function arcOf([ax, ay, bulge]: Corner, [bx, by]: Corner) {
  const sweep = 4 * Math.atan(bulge);
  const chord = Math.hypot(bx - ax, by - ay);
  const radius = Math.abs(chord / (2 * Math.sin(sweep / 2)));
  const toCenter = (chord / 2 / Math.tan(sweep / 2)) as number;
  const center: Pt = [(ax + bx) / 2 - ((by - ay) / chord) * toCenter, (ay + by) / 2 + ((bx - ax) / chord) * toCenter];
  return { center, radius, start: Math.atan2(ay - center[1], ax - center[0]), sweep };
}

/** Points along a closed outline, no further apart than 5 mm. */
function sampled(outline: readonly Corner[]): Pt[] {
  return outline.flatMap((a, i): Pt[] => {
    const b = outline[(i + 1) % outline.length]!;
    if (a[2] === 0) {
      const n = Math.max(1, Math.ceil(Math.hypot(b[0] - a[0], b[1] - a[1]) / STEP));
      return Array.from({ length: n }, (_, k) => [a[0] + ((b[0] - a[0]) * k) / n, a[1] + ((b[1] - a[1]) * k) / n]);
    }
    const { center, radius, start, sweep } = arcOf(a, b);
    const n = Math.max(1, Math.ceil((radius * Math.abs(sweep)) / STEP));
    return Array.from({ length: n }, (_, k): Pt => {
      const at = start + (sweep * k) / n;
      return [center[0] + radius * Math.cos(at), center[1] + radius * Math.sin(at)];
    });
  });
}

/** The distance of a point from the sides of an outline, straight ones and arcs, brute force. */
function distanceFrom(outline: readonly Corner[], [x, y]: Pt): number {
  return Math.min(
    ...outline.map((a, i) => {
      const b = outline[(i + 1) % outline.length]!;
      if (a[2] !== 0) {
        const { center, radius, start, sweep } = arcOf(a, b);
        const at = Math.atan2(y - center[1], x - center[0]);
        const turn = (((sweep > 0 ? at - start : start - at) % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
        if (turn <= Math.abs(sweep)) return Math.abs(Math.hypot(x - center[0], y - center[1]) - radius);
      }
      const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
      const share = Math.max(0, Math.min(1, ((x - a[0]) * dx + (y - a[1]) * dy) / (dx * dx + dy * dy)));
      if (a[2] !== 0) return Math.min(Math.hypot(x - a[0], y - a[1]), Math.hypot(x - b[0], y - b[1]));
      return Math.hypot(x - a[0] - dx * share, y - a[1] - dy * share);
    }),
  );
}

/** Whether a point is inside, by the parity of the sides to its right. */
function isInside(points: readonly Pt[], [x, y]: Pt): boolean {
  return (
    points.filter(([ax, ay], i) => {
      const [bx, by] = points[(i + 1) % points.length]!;
      return ay > y !== by > y && ax + ((bx - ax) * (y - ay)) / (by - ay) > x;
    }).length %
      2 ===
    1
  );
}

describe('the saw line of every template', () => {
  it('keeps 1/8 in outside the finished line everywhere, and more only at its corners', async () => {
    for (const { dxf, of } of await allTemplates()) {
      const outline = outlineOf(dxf);
      const inside = sampled(outline);
      const distances = sampled(outlineOf(dxf, 'SAW-LINE')).map((p) => {
        expect(isInside(inside, p), of).toBe(false);
        return distanceFrom(outline, p);
      });
      expect(Math.min(...distances), of).toBeGreaterThan(MARGIN - 1e-5);
      // Pointed corners: a square one reaches √2 of the margin.
      expect(Math.max(...distances), of).toBeLessThan(MARGIN * Math.SQRT2 * 1.05);
      const exact = distances.filter((d) => d < MARGIN + 1e-5).length;
      expect(exact / distances.length, of).toBeGreaterThan(0.8);
    }
  });

  it('leaves no stretch of the finished line without it', async () => {
    for (const { dxf, of } of await allTemplates()) {
      const saw = outlineOf(dxf, 'SAW-LINE');
      const far = sampled(outlineOf(dxf)).map((p) => distanceFrom(saw, p));
      expect(Math.min(...far), of).toBeGreaterThan(MARGIN - 1e-5);
      expect(Math.max(...far), of).toBeLessThan(MARGIN * Math.SQRT2 + 1e-9);
    }
  });

  it('has a measure that sees a line that is too near', () => {
    const box: Corner[] = [
      [0, 0, 0],
      [100, 0, 0],
      [100, 50, 0],
      [0, 50, 0],
    ];
    expect(distanceFrom(box, [50, -3])).toBe(3);
    expect(distanceFrom(box, [103, 54])).toBe(5);
    expect(
      distanceFrom(
        [
          [0, 0, 1],
          [10, 0, 0],
        ],
        [5, -7],
      ),
    ).toBeCloseTo(2, 12);
  });
});

describe('the outline in the file, measured again by makerjs', () => {
  /** The outline as makerjs paths, from the corners and bulges that dxf-parser read. */
  const model = (outline: readonly Corner[]): MakerJs.IModel => ({
    paths: Object.fromEntries(
      outline.map((a, i) => {
        const b = outline[(i + 1) % outline.length]!;
        if (a[2] === 0) return [`${i}`, new makerjs.paths.Line([a[0], a[1]], [b[0], b[1]])];
        const { center, radius, start, sweep } = arcOf(a, b);
        const [from, to] = sweep > 0 ? [start, start + sweep] : [start + sweep, start];
        const degrees = (angle: number): number => ((((angle * 180) / Math.PI) % 360) + 360) % 360;
        return [`${i}`, new makerjs.paths.Arc([...center], radius, degrees(from), degrees(to))];
      }),
    ),
  });

  const asCorners = (outline: readonly PointInFile[]): Corner[] => outline.map((p) => [p.x, p.y, p.bulge ?? 0]);

  /** Perimeter straight from the corners: chords and arcs. */
  const perimeter = (outline: readonly Corner[]): number =>
    outline.reduce((sum, a, i) => {
      const b = outline[(i + 1) % outline.length]!;
      if (a[2] === 0) return sum + Math.hypot(b[0] - a[0], b[1] - a[1]);
      const { radius, sweep } = arcOf(a, b);
      return sum + radius * Math.abs(sweep);
    }, 0);

  it('is as long and as large as the face of the part in model.json', async () => {
    for (const { dxf, outline, of, mark } of await allTemplates()) {
      const file = model(outlineOf(dxf));
      expect(makerjs.measure.modelPathLength(file), of).toBeCloseTo(perimeter(asCorners(outline)), 3);
      const extents = makerjs.measure.modelExtents(file)!;
      const points = sampled(asCorners(outline));
      const spread = ([0, 1] as const).map((k) => {
        const values = points.map((p) => p[k]);
        return Math.max(...values) - Math.min(...values);
      }) as [number, number];
      // Posts and panel legs stand: their length is upright on the sheet.
      const [wide, tall] = /^[PL]/.test(mark) ? [spread[1], spread[0]] : spread;
      expect(extents.low[0], of).toBeCloseTo(0, 6);
      expect(extents.low[1], of).toBeCloseTo(0, 6);
      expect(extents.high[0], of).toBeCloseTo(wide, 4);
      expect(extents.high[1], of).toBeCloseTo(tall, 4);
    }
  });
});
