import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { arcOfBulge, facetOutline, type Outline, outlineArea, roundCorner } from '../../lib/geometry/outline.ts';

const rectangle: Outline = [
  { x: 0, y: 0, surface: 'south' },
  { x: 300, y: 0, surface: 'east' },
  { x: 300, y: 100, surface: 'north' },
  { x: 0, y: 100, surface: 'west' },
];

/** An L: its corner at index 3 is dented. */
const ell: Outline = [
  { x: 0, y: 0 },
  { x: 300, y: 0 },
  { x: 300, y: 40 },
  { x: 120, y: 40 },
  { x: 120, y: 200 },
  { x: 0, y: 200 },
];

const number = (least: number, most: number): fc.Arbitrary<number> => fc.double({ min: least, max: most, noNaN: true });

describe('arcs', () => {
  // Source: the circle. Both ends lie on it, and the sagitta is bulge times half the chord.
  test('center, radius and span of any bulge', () => {
    fc.assert(
      fc.property(
        number(-3, 3),
        number(-500, 500),
        number(1, 500),
        number(0.01, 1),
        fc.boolean(),
        (x, y, dx, size, left) => {
          const bulge = left ? size : -size;
          const [a, b] = [
            { x, y, bulge },
            { x: x + dx, y: y + 7 },
          ];
          const arc = arcOfBulge(a, b);
          expect(Math.hypot(b.x - arc.cx, b.y - arc.cy)).toBeCloseTo(arc.radius, 6);
          const half = Math.hypot(dx, 7) / 2;
          const sagitta = arc.radius * (1 - Math.cos(arc.span / 2));
          expect(sagitta / (size * half)).toBeCloseTo(1, 6);
          const middle = arc.start + arc.span / 2;
          const side =
            dx * (arc.cy + arc.radius * Math.sin(middle) - y) - 7 * (arc.cx + arc.radius * Math.cos(middle) - x);
          expect(Math.sign(side)).toBe(left ? -1 : 1);
        },
      ),
      { seed: 11, numRuns: 500 },
    );
  });

  test('area of a circle and of a lens cut out of a square (closed form)', () => {
    const circle: Outline = [
      { x: -50, y: 0, bulge: 1 },
      { x: 50, y: 0, bulge: 1 },
    ];
    expect(outlineArea(circle)).toBeCloseTo(Math.PI * 2500, 8);
    const hollow = rectangle.map((p, i) => (i === 2 ? { ...p, bulge: -Math.tan(Math.PI / 8) } : p));
    const segment = (300 ** 2 / 2) * (Math.PI / 2 - 1) * 0.5;
    expect(outlineArea(hollow)).toBeCloseTo(30_000 - segment, 8);
  });
});

describe('chords', () => {
  const bulged = (radius: number, span: number): Outline => {
    const chord = 2 * radius * Math.sin(span / 2);
    return [
      { x: 0, y: 0, bulge: Math.tan(span / 4), surface: 'round' },
      { x: chord, y: 0, surface: 'east' },
      { x: chord / 2, y: 3 * radius, surface: 'west' },
    ];
  };

  // Source: the circle. Corners of chords lie on it; a chord of span t leaves it by r (1 - cos t/2).
  test('have their ends on the arc, span 7.5 degrees at most and stay within 0.11 mm', () => {
    fc.assert(
      fc.property(number(1, 5000), number(0.05, 3), (radius, span) => {
        const outline = bulged(radius, span);
        const arc = arcOfBulge(outline[0]!, outline[1]!);
        const points = facetOutline(outline);
        const chords = points.filter((p) => p.surface === 'round').length;
        for (const p of points.slice(0, chords + 1)) {
          expect(Math.abs(Math.hypot(p.x - arc.cx, p.y - arc.cy) / radius - 1)).toBeLessThan(1e-8);
        }
        const each = span / chords;
        expect(each).toBeLessThanOrEqual((7.5 * Math.PI) / 180 + 1e-6);
        expect(radius * (1 - Math.cos(each / 2))).toBeLessThan(0.11);
        expect(points.every((p) => p.bulge === undefined)).toBe(true);
        expect(points.slice(chords).map((p) => p.surface)).toEqual(['east', 'west']);
      }),
      { seed: 13, numRuns: 1000 },
    );
  });

  test('a straight outline stays as it is', () => {
    expect(facetOutline(rectangle)).toEqual(rectangle);
  });
});

describe('a rounded corner', () => {
  // Source: closed form. A corner that turns by t loses r² (tan t/2 - t/2); a dent gains as much.
  test('takes off what lies between the corner and its arc', () => {
    const lost = 1 - Math.PI / 4;
    expect(outlineArea(roundCorner(rectangle, 1, 40))).toBeCloseTo(30_000 - lost * 1600, 8);
    expect(outlineArea(roundCorner(ell, 3, 25))).toBeCloseTo(outlineArea(ell) + lost * 625, 8);
    const triangle = [
      { x: 0, y: 0 },
      { x: 100, y: 0 },
      { x: 50, y: 50 * Math.sqrt(3) },
    ];
    const t = (2 * Math.PI) / 3;
    expect(outlineArea(roundCorner(triangle, 0, 10))).toBeCloseTo(
      outlineArea(triangle) - 100 * (Math.tan(t / 2) - t / 2),
      8,
    );
  });

  test('keeps the names of its sides and gives the arc its own', () => {
    expect(roundCorner(rectangle, 1, 40).map((p) => p.surface)).toEqual(['south', 'round.1', 'east', 'north', 'west']);
  });

  test('meets both sides without a kink', () => {
    const [, arc, after] = roundCorner(rectangle, 1, 40);
    const { cx, cy, radius } = arcOfBulge(arc!, after!);
    expect(Math.hypot(cx - 260, cy - 40, radius - 40)).toBeLessThan(1e-10);
  });

  test('that is too large is refused with the largest that fits, and that one does fit', () => {
    for (const [outline, index, radius, most] of [
      [rectangle, 1, 101, 100],
      [ell, 3, 200, 160],
      [roundCorner(rectangle, 1, 60), 3, 50, 40],
    ] as const) {
      expect(() => roundCorner(outline, index, radius)).toThrow(
        `a radius of ${radius} mm does not fit corner ${index}; at most ${most}`,
      );
      expect(() => roundCorner(outline, index, most)).not.toThrow();
      expect(() => roundCorner(outline, index, most + 0.001)).toThrow('does not fit');
    }
  });

  test('at an arc is refused', () => {
    const rounded = roundCorner(rectangle, 1, 40);
    expect(() => roundCorner(rounded, 1, 5)).toThrow('corner 1 touches an arc and cannot be rounded');
    expect(() => roundCorner(rounded, 2, 5)).toThrow('corner 2 touches an arc and cannot be rounded');
  });
});
