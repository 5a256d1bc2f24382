import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { toOuter } from '../../lib/geometry/frame.ts';
import { scribe } from '../../lib/geometry/scribe.ts';
import { type Surface, surfaceToOuter } from '../../lib/geometry/surface.ts';
import { wedge } from '../../lib/parts/top.ts';
import { standing } from './random-frames.ts';
import { bruteHeight, surfaces } from './random-surfaces.ts';

const number = (least: number, most: number): fc.Arbitrary<number> =>
  fc.integer({ min: 1, max: 999 }).map((n) => least + ((most - least) * n) / 1000);

// Source: brute force. A point of the scribed line, put where it stands, lies on the surface.
describe.each(['x', 'y'] as const)('a scribed line, %s level', (level) => {
  test('lies on the surface all along', () => {
    let creases = 0;
    fc.assert(
      fc.property(
        surfaces,
        standing(level),
        fc.tuple(number(-500, 500), number(10, 900)),
        number(-100, 100),
        number(0, 1),
        (surface, frame, [from, length], z, t) => {
          const line = scribe(surface, frame, level, from, from + length, z);
          creases += line.length - 2;
          expect(line[0]!.along).toBeCloseTo(from, 12);
          expect(line.at(-1)!.along).toBeCloseTo(from + length, 9);
          line.slice(1).forEach((b, k) => {
            const a = line[k]!;
            const [along, height] = [a.along + (b.along - a.along) * t, a.height + (b.height - a.height) * t];
            const p = toOuter(frame, level === 'x' ? [along, height, z] : [height, along, z]);
            expect(Math.abs(bruteHeight(surface, p[0], p[1]) - p[2])).toBeLessThan(1e-8);
          });
        },
      ),
      { seed: level === 'x' ? 8 : 9, numRuns: 1000 },
    );
    expect(creases).toBeGreaterThan(150);
  });
});

describe('a bearer under a wedge', () => {
  const under: Surface = surfaceToOuter(wedge(1016, 57.15, 28.575), {
    origin: [0, 0, 749.3],
    x: [1, 0, 0],
    y: [0, -1, 0],
  });
  const across = { origin: [300, -381, 620], x: [0, 1, 0], y: [0, 0, 1] } as const;

  test('gets its V: the ridge in the middle, both ends higher by slope times half its length (closed form)', () => {
    const line = scribe(under, across, 'x', 0, 762, 0);
    const ridge = 749.3 - 57.15 - 620;
    expect(line.map((p) => p.along)).toEqual([0, 381, 762]);
    const rise = (28.575 / 508) * 381;
    for (const [k, height] of [ridge + rise, ridge, ridge + rise].entries()) {
      expect(line[k]!.height).toBeCloseTo(height, 10);
    }
    expect(line.map((p) => p.plane)).toEqual(['right', 'left', 'left']);
  });

  test('that leans is refused, with its up axis', () => {
    const leaning = { ...across, y: [0.1, 0, Math.sqrt(0.99)] } as const;
    expect(() => scribe(under, leaning, 'x', 0, 762, 0)).toThrow(
      'the part does not stand upright: its up axis is [0.1, 0, 0.99',
    );
  });
});
