import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { toInner, toOuter, turnIn } from '../../lib/geometry/frame.ts';
import {
  heightAt,
  planeAt,
  planeHeight,
  type Surface,
  sectionAlong,
  surfaceToOuter,
} from '../../lib/geometry/surface.ts';
import { dot, type Vec2 } from '../../lib/geometry/vec.ts';
import { wedge } from '../../lib/parts/top.ts';
import { frames } from './random-frames.ts';
import { bruteHeight, surfaces } from './random-surfaces.ts';

const place = fc.integer({ min: -12_000, max: 12_000 }).map((n) => n / 8);

describe('a surface', () => {
  // Source: brute force, every plane asked.
  test('is as high as its highest or lowest plane', () => {
    fc.assert(
      fc.property(surfaces, place, place, (surface, x, y) => {
        expect(heightAt(surface, x, y)).toBe(bruteHeight(surface, x, y));
        expect(planeHeight(planeAt(surface, x, y), x, y)).toBe(heightAt(surface, x, y));
      }),
      { seed: 5, numRuns: 1000 },
    );
  });
});

describe('a section', () => {
  test('of a wedge has its crease exactly on the center line, and follows a plane on each side (closed form)', () => {
    const top = wedge(1016, 57.15, 28.575);
    expect(sectionAlong(top, [700, -508], [700, 508])).toEqual([
      { s: 0, z: 28.575, plane: 'left' },
      { s: 508, z: 57.15, plane: 'right' },
      { s: 1016, z: 28.575, plane: 'right' },
    ]);
    expect(sectionAlong(top, [0, 0], [2000, 0])).toEqual([
      { s: 0, z: 57.15, plane: 'left' },
      { s: 2000, z: 57.15, plane: 'left' },
    ]);
    // At 45 degrees the way to the crease is longer by the root of two.
    const [, ridge] = sectionAlong(top, [0, -100], [200, 100]);
    expect(ridge!.s).toBeCloseTo(100 * Math.SQRT2, 12);
  });

  test('of a flat or single-slope surface has two points', () => {
    expect(sectionAlong(wedge(800, 40, 40), [0, -300], [0, 300]).map((p) => p.z)).toEqual([40, 40]);
    const slope: Surface = { take: 'highest', planes: [{ name: 'down', a: 0.1, b: 0, c: 700 }] };
    expect(sectionAlong(slope, [0, 0], [100, 0])).toEqual([
      { s: 0, z: 700, plane: 'down' },
      { s: 100, z: 710, plane: 'down' },
    ]);
  });

  // Source: brute force. Between its points a section is straight, and the surface agrees everywhere on the way.
  test('of anything is the surface, point for point', () => {
    let creases = 0;
    fc.assert(
      fc.property(surfaces, fc.tuple(place, place), fc.tuple(place, place), (surface, from, to) => {
        const span = Math.hypot(to[0] - from[0], to[1] - from[1]);
        fc.pre(span > 1);
        const section = sectionAlong(surface, from, to);
        creases += section.length - 2;
        const at = (s: number): Vec2 => [
          from[0] + ((to[0] - from[0]) * s) / span,
          from[1] + ((to[1] - from[1]) * s) / span,
        ];
        section.slice(1).forEach((b, k) => {
          const a = section[k]!;
          const plane = surface.planes.find((p) => p.name === a.plane)!;
          for (const t of [0.003, 0.2, 0.5, 0.77, 0.998]) {
            const here = at(a.s + (b.s - a.s) * t);
            const truth = bruteHeight(surface, ...here);
            expect(Math.abs(a.z + (b.z - a.z) * t - truth)).toBeLessThan(1e-8);
            expect(Math.abs(planeHeight(plane, ...here) - truth)).toBeLessThan(1e-8);
          }
        });
        expect(section[0]!.s).toBe(0);
        expect(section.at(-1)!.s).toBe(span);
      }),
      { seed: 6, numRuns: 2000 },
    );
    expect(creases).toBeGreaterThan(1000);
  });
});

describe('a surface that is placed', () => {
  // Source: brute force. Points of the surface are moved one by one; the moved surface must run through them.
  test('runs through the moved points, whichever way it is turned', () => {
    let [over, under, refused] = [0, 0, 0];
    fc.assert(
      fc.property(surfaces, frames, place, place, (surface, frame, x, y) => {
        const up = turnIn(frame, [0, 0, 1]);
        const steep = surface.planes.map((p) => dot([-p.a, -p.b, 1], up) * Math.sign(up[2]));
        if (Math.min(...steep) < 1e-9) {
          refused += 1;
          expect(() => surfaceToOuter(surface, frame)).toThrow('stands upright or overhangs when placed');
          return;
        }
        if (Math.min(...steep) < 0.05) return;
        const moved = surfaceToOuter(surface, frame);
        const p = toOuter(frame, [x, y, bruteHeight(surface, x, y)]);
        expect(Math.abs(heightAt(moved, p[0], p[1]) - p[2])).toBeLessThan(1e-6);
        expect(planeAt(moved, p[0], p[1]).name).toBe(planeAt(surface, x, y).name);
        // And back: a point 1 mm above it is on the far side from the wood when it is turned over, and not otherwise.
        const inner = toInner(frame, [p[0], p[1], p[2] + 1]);
        const above = inner[2] > bruteHeight(surface, inner[0], inner[1]);
        expect(above).toBe(up[2] > 0);
        if (up[2] > 0) over += 1;
        else under += 1;
      }),
      { seed: 7, numRuns: 3000 },
    );
    expect(Math.min(over, under)).toBeGreaterThan(500);
    expect(refused).toBeGreaterThan(100);
  });

  test('a top turned over, its show face 740 mm up: the lowest depth becomes the highest underside', () => {
    const turned = { origin: [0, 0, 740], x: [1, 0, 0], y: [0, -1, 0] } as const;
    const under = surfaceToOuter(wedge(960, 50, 28), turned);
    expect(under.take).toBe('highest');
    expect([-480, 0, 480].map((y) => heightAt(under, 1000, y))).toEqual([712, 690, 712]);
    expect(planeAt(under, 0, 100).name).toBe('left');
  });
});
