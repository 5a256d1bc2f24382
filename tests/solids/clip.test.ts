import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clipConvex } from '../../lib/derive/solids/clip.ts';
import { sweep } from '../../lib/derive/solids/prism.ts';
import { openEdges, type Solid, volumeOf } from '../../lib/derive/solids/solid.ts';
import { dot, unit, type Vec3 } from '../../lib/geometry/vec.ts';

const block = (x: number, y: number, z: number): Solid =>
  sweep(
    [
      { x: 0, y: 0, surface: 'south' },
      { x, y: 0, surface: 'east' },
      { x, y, surface: 'north' },
      { x: 0, y, surface: 'west' },
    ],
    [
      { x: 0, y: 0 },
      { x, y: 0 },
      { x, y },
      { x: 0, y },
    ],
    z,
    (u, v, w) => [u, v, w],
    { near: 'below', far: 'above' },
  );

/** Keeps what lies behind the plane n · p = d. */
const cut = (solid: Solid, n: Vec3, d: number): Solid => clipConvex(solid, (p) => dot(n, p) - d, 'cut');

const expectGood = (solid: Solid, volume: number): void => {
  expect(openEdges(solid)).toEqual([]);
  expect(volumeOf(solid)).toBeCloseTo(volume, 6);
};

const cube = block(10, 10, 10);

// Source of the volumes: closed form.
describe('a cube of 10 mm', () => {
  test('cut square', () => {
    const half = cut(cube, [1, 0, 0], 4);
    expectGood(half, 400);
    expect(half.faces.map((f) => f.surface).sort()).toEqual(['above', 'below', 'cut', 'north', 'south', 'west']);
  });

  test('cut through four of its corners', () => {
    const wedge = cut(cube, unit([1, 1, 0]), 10 / Math.SQRT2);
    expectGood(wedge, 500);
    expect(wedge.vertices).toHaveLength(6);
    expect(wedge.faces).toHaveLength(5);
  });

  test('cut through three corners, one of them taken off', () => {
    const left = cut(cube, unit([1, 1, 1]), 20 / Math.sqrt(3));
    expectGood(left, 1000 - 1000 / 6);
    expect(left.vertices).toHaveLength(7);
    expectGood(cut(cube, unit([-1, -1, -1]), -20 / Math.sqrt(3)), 1000 / 6);
  });

  test('cut through one edge and two others', () => {
    // Through the edge x = z = 0, leaning towards the middle of the face above.
    const n = unit([1, 0, -0.5]);
    expectGood(cut(cube, n, 0), 250);
    expectGood(cut(cube, [-n[0], -n[1], -n[2]], 0), 750);
  });

  test('touched in a corner, an edge or a face, or missed: comes back as it is', () => {
    for (const [n, d] of [
      [[1, 1, 1], 30],
      [[1, 1, 0], 20],
      [[1, 0, 0], 10],
      [[1, 0, 0], 10 + 5e-8],
      [[1, 0, 0], 12],
    ] as const)
      expect(cut(cube, n, d)).toBe(cube);
  });

  test('nothing left, or no more than a corner, an edge or a face: refused by name', () => {
    for (const [n, d] of [
      [[1, 1, 1], 0],
      [[1, 1, 0], 0],
      [[1, 0, 0], 0],
      [[1, 0, 0], 5e-8],
      [[1, 0, 0], -2],
    ] as const)
      expect(() => cut(cube, n, d)).toThrow('nothing is left of the solid at the cut cut');
  });

  test('a feather edge: a wedge that runs out to nothing stays closed', () => {
    const feather = cut(cube, unit([1e-3, 0, 1]), 10 * unit([1e-3, 0, 1])[0]);
    expectGood(feather, 0.5 * 10 * 0.01 * 10);
    expect(feather.faces).toHaveLength(5);
    // A thin slice that is cut again across its feather edge.
    expectGood(cut(feather, [1, 0, 0], 5), 10 * ((0.01 + 0.005) / 2) * 5);
  });
});

test('anything: two halves of any convex solid are closed and add up, however the cuts fall', () => {
  // Whole numbers make planes run through corners and along edges again and again.
  const whole = fc.integer({ min: -2, max: 2 });
  const plane = fc
    .tuple(
      whole,
      whole,
      whole,
      fc.integer({ min: 0, max: 8 }),
      fc.integer({ min: 0, max: 8 }),
      fc.integer({ min: 0, max: 8 }),
    )
    .filter(([a, b, c]) => a !== 0 || b !== 0 || c !== 0)
    .map(([a, b, c, x, y, z]) => {
      const n = unit([a, b, c]);
      return { n, d: dot(n, [x, y, z]) };
    });
  let halves = 0;
  fc.assert(
    fc.property(fc.array(plane, { minLength: 1, maxLength: 6 }), (planes) => {
      let solid = block(8, 8, 8);
      for (const { n, d } of planes) {
        const parts = [cutOrNothing(solid, n, d), cutOrNothing(solid, [-n[0], -n[1], -n[2]], -d)];
        const both = parts.reduce((sum, part) => sum + (part ? volumeOf(part) : 0), 0);
        expect(both).toBeCloseTo(volumeOf(solid), 8);
        for (const part of parts) if (part) expect(openEdges(part)).toEqual([]);
        if (parts[0] && parts[1]) halves += 1;
        solid = parts[0] ?? solid;
      }
    }),
    { seed: 43, numRuns: 1500 },
  );
  expect(halves).toBeGreaterThan(1500);
});

function cutOrNothing(solid: Solid, n: Vec3, d: number): Solid | undefined {
  try {
    return cut(solid, n, d);
  } catch (error) {
    if (/^nothing is left/.test((error as Error).message)) return undefined;
    throw error;
  }
}
