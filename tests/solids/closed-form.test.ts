import { describe, expect, test } from 'vitest';
import { panelSolid } from '../../lib/derive/solids/panel.ts';
import { profileRows } from '../../lib/derive/solids/profile.ts';
import { openEdges, volumeOf } from '../../lib/derive/solids/solid.ts';
import { bodySolid } from '../../lib/derive/solids/solid-of.ts';
import { type Outline, outlineArea } from '../../lib/geometry/outline.ts';
import type { Surface } from '../../lib/geometry/surface.ts';
import type { PanelBody } from '../../lib/model/body.ts';
import type { EdgeProfile } from '../../lib/model/feature.ts';
import { looseTenon } from '../../lib/parts/loose-tenon.ts';
import { wedge } from '../../lib/parts/top.ts';

const INCH = 25.4;

/** Equal but for rounding. */
const expectSame = (value: number, truth: number): void => {
  expect(Math.abs(value / truth - 1)).toBeLessThan(1e-12);
};

const panel = (length: number, width: number, underside: Surface): PanelBody => ({
  kind: 'panel',
  length,
  width,
  underside,
});

const both = (make: (edge: EdgeProfile['edge']) => EdgeProfile): EdgeProfile[] => [make('show'), make('underside')];
const chamfer = (width: number) => (edge: EdgeProfile['edge']) =>
  ({ kind: 'chamfer', id: edge, edge, width, angle: 45 }) as const;
const round = (radius: number) => (edge: EdgeProfile['edge']) =>
  ({ kind: 'roundOver', id: edge, edge, radius }) as const;

describe('a wedge-section top, 84 x 40 in, 2 1/4 to 1 1/8 in', () => {
  const top = panel(84 * INCH, 40 * INCH, wedge(40 * INCH, 2.25 * INCH, 1.125 * INCH));

  test('holds length x width x mean thickness = 5,670 in³ (closed form)', () => {
    expectSame(volumeOf(panelSolid(top, [])) / INCH ** 3, 5670);
  });

  test('loses what a chamfer takes: w²/2 along every arris, mitred, climbing with the taper (closed form)', () => {
    const w = 0.25 * INCH;
    const removed = volumeOf(panelSolid(top, [])) - volumeOf(panelSolid(top, [chamfer(w)('show')]));
    expectSame(removed, (top.length + top.width) * w ** 2 - (4 / 3) * w ** 3);
    // Below, the same depth is taken upright over the same plan, whatever the slope.
    const under = volumeOf(panelSolid(top, [])) - volumeOf(panelSolid(top, [chamfer(w)('underside')]));
    expect(Math.abs(under / removed - 1)).toBeLessThan(1e-9);
  });

  test('loses what its faceted round-overs take, layer by layer (Simpson, exact for frustums)', () => {
    const r = 0.25 * INCH;
    const plan = (inset: number): number => (top.length - 2 * inset) * (top.width - 2 * inset);
    const rows = profileRows(round(r)('show'));
    const kept = rows.slice(1).reduce((sum, lower, k) => {
      const upper = rows[k]!;
      const mean = (plan(upper.inset) + 4 * plan((upper.inset + lower.inset) / 2) + plan(lower.inset)) / 6;
      return sum + (lower.depth - upper.depth) * mean;
    }, 0);
    const removed = plan(0) * r - kept;
    const none = volumeOf(panelSolid(top, []));
    expect(Math.abs((none - volumeOf(panelSolid(top, both(round(r))))) / (2 * removed) - 1)).toBeLessThan(1e-9);
  });

  test('a true quarter round takes nearly that: (1 - π/4) r² along every arris (closed form)', () => {
    const r = 0.25 * INCH;
    const edge = 1 - Math.PI / 4;
    const corner = 5 / 3 - Math.PI / 2;
    const removed = 2 * (top.length + top.width) * edge * r ** 2 - 4 * corner * r ** 3;
    const faceted = volumeOf(panelSolid(top, [])) - volumeOf(panelSolid(top, [round(r)('show')]));
    // Chords of n facets lie inside the circle: they take n/2 (t - sin t) r² more, t = 90°/n.
    const n = profileRows(round(r)('show')).length - 1;
    const t = Math.PI / 2 / n;
    const more = (n / 2) * (t - Math.sin(t)) * r ** 2 * 2 * (top.length + top.width);
    expect(Math.abs(faceted - removed - more) / removed).toBeLessThan(1e-3);
    expect(faceted / removed).toBeGreaterThan(1);
  });
});

describe('an underside of four planes', () => {
  const [length, width, thick, edge] = [1500, 800, 60, 30];
  const hip = (endSlope: number): Surface => {
    const rise = (thick - edge) / (width / 2);
    return {
      take: 'lowest',
      planes: [
        { name: 'left', a: 0, b: rise, c: edge + (rise * width) / 2 },
        { name: 'right', a: 0, b: -rise, c: edge + (rise * width) / 2 },
        { name: 'near', a: endSlope, b: 0, c: edge },
        { name: 'far', a: -endSlope, b: 0, c: edge + endSlope * length },
      ],
    };
  };

  test('with hips into the corners holds a slab and a hip roof h w (3 l - w) / 6 (closed form)', () => {
    const solid = panelSolid(panel(length, width, hip((thick - edge) / (width / 2))), []);
    expect(openEdges(solid)).toEqual([]);
    expectSame(volumeOf(solid), length * width * edge + ((thick - edge) * width * (3 * length - width)) / 6);
  });

  test('with steeper ends holds a slab and a roof h w (2 l + ridge) / 6 (closed form)', () => {
    const run = 250;
    const solid = panelSolid(panel(length, width, hip((thick - edge) / run)), []);
    expect(openEdges(solid)).toEqual([]);
    expectSame(volumeOf(solid), length * width * edge + ((thick - edge) * width * (2 * length + length - 2 * run)) / 6);
  });

  test('is refused with a profile whose rings the hips leave by other edges', () => {
    expect(() => panelSolid(panel(length, width, hip((thick - edge) / 250)), both(chamfer(8)))).toThrow(
      'a crease of the underside runs out where profile.underside meets',
    );
  });

  test('a single slope and a flat one hold their mean thickness (closed form)', () => {
    const slope: Surface = { take: 'lowest', planes: [{ name: 'down', a: 0.01, b: -0.02, c: 40 }] };
    expectSame(volumeOf(panelSolid(panel(1000, 600, slope), [])), 1000 * 600 * 45);
    expectSame(volumeOf(panelSolid(panel(1000, 600, wedge(600, 40, 40)), [])), 1000 * 600 * 40);
  });
});

describe('prisms and bars', () => {
  /** A 200 x 100 board with a half-round nose of radius 50 and a hollow of the same in the other end. */
  const capsule: Outline = [
    { x: 0, y: 0 },
    { x: 200, y: 0, bulge: 1 },
    { x: 200, y: 100 },
    { x: 0, y: 100, bulge: -1 },
  ];
  const prism = (outline: Outline, thickness: number): number =>
    volumeOf(bodySolid<'prism'>({ kind: 'prism', outline, thickness }, []));

  test('a nose and a hollow of one radius cancel out (closed form)', () => {
    expectSame(outlineArea(capsule), 200 * 100);
    expectSame(prism(capsule, 30), 200 * 100 * 30);
  });

  test('the chords of a nose take the area between arc and chords: n (t - sin t) r²/2 (closed form)', () => {
    const nose = capsule.map((p) => ({ ...p, bulge: Math.max(0, p.bulge ?? 0) }));
    expectSame(outlineArea(nose), 200 * 100 + (Math.PI * 50 ** 2) / 2);
    const solid = bodySolid<'prism'>({ kind: 'prism', outline: nose, thickness: 30 }, []);
    // Two ends, three straight sides, and the rest are chords.
    const n = solid.faces.length - 5;
    const t = Math.PI / n;
    expect(t).toBeLessThan((7.5 * Math.PI) / 180 + 1e-9);
    expectSame(volumeOf(solid), 30 * (outlineArea(nose) - (n * (t - Math.sin(t)) * 50 ** 2) / 2));
  });

  test('a loose tenon is a box between two half octagons (closed form)', () => {
    const tenon = looseTenon({
      id: 't',
      mark: 'T',
      wood: 'cherry',
      length: 60,
      width: 40,
      thickness: 10,
      edges: 'round',
    });
    const octagon = 2 * Math.SQRT2 * 5 ** 2;
    expectSame(volumeOf(bodySolid<'bar'>(tenon.body as never, [])), 60 * (30 * 10 + octagon));
    const square = looseTenon({
      id: 't',
      mark: 'T',
      wood: 'cherry',
      length: 60,
      width: 40,
      thickness: 10,
      edges: 'square',
    });
    expectSame(volumeOf(bodySolid<'bar'>(square.body as never, [])), 60 * 40 * 10);
  });

  test('a bevelled cut: the mean of its two outlines (prismatoid, closed form)', () => {
    const outline = (height: number): Outline => [
      { x: 0, y: 0 },
      { x: 500, y: 0 },
      { x: 500, y: height },
      { x: 0, y: height },
    ];
    const body = { kind: 'prism', outline: outline(80), far: outline(90), thickness: 40 } as const;
    expectSame(volumeOf(bodySolid<'prism'>(body, [])), 500 * 40 * 85);
    const short = { ...body, far: outline(90).slice(1) };
    expect(() => bodySolid<'prism'>(short, [])).toThrow(
      'the far outline has 3 points, the near one 4; they must match',
    );
  });
});
