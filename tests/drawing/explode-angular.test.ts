import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Arc, Pt, Solid } from '../../lib/drawing/entity.ts';
import { explode } from '../../lib/drawing/explode.ts';
import { DEFAULT_STYLE } from '../../lib/drawing/style.ts';
import { angular, ray } from './samples.ts';

const turned = (def: { start: readonly [Pt, Pt]; end: readonly [Pt, Pt] }): number => {
  const way = ([from, to]: readonly [Pt, Pt]): number => Math.atan2(to[1] - from[1], to[0] - from[0]);
  return (((((way(def.end) - way(def.start)) * 180) / Math.PI) % 360) + 360) % 360;
};

const VERTEX: Pt = [300, 120];

/** Two lines that cross at the vertex, as anyone might hand them over. */
function cases(start: number, value: number): readonly (readonly [string, readonly [Pt, Pt], readonly [Pt, Pt]])[] {
  const a: readonly [Pt, Pt] = [ray(VERTEX, start, 20), ray(VERTEX, start, 80)];
  const b: readonly [Pt, Pt] = [VERTEX, ray(VERTEX, start + value, 90)];
  const flip = ([p, q]: readonly [Pt, Pt]): readonly [Pt, Pt] => [q, p];
  return [
    ['in order', a, b],
    ['second first', b, a],
    ['points swapped', flip(a), b],
    ['both', flip(b), flip(a)],
  ];
}

describe.each([0, 37, 90, 135, 180, 225, 270, 315, 359])('1.6 degrees from %d degrees on', (start) => {
  test.each(cases(start, 1.6))('%s', (_, first, second) => {
    const made = explode(angular(first, second, ray(VERTEX, start + 0.8, 100)), DEFAULT_STYLE);
    expect(made.value).toBeCloseTo(1.6, 9);
    expect(made.text).toBe('1.6\u00b0');
    if (made.def.type !== 'angular') throw new Error('not an angle');
    expect(turned(made.def)).toBeCloseTo(1.6, 6); // counter-clockwise: clockwise would be 358.4
  });

  test('the sector across the vertex, and the two beside it', () => {
    const [, first, second] = cases(start, 1.6)[0]!;
    const at = (angle: number) => explode(angular(first, second, ray(VERTEX, start + angle, 100)), DEFAULT_STYLE).value;
    expect(at(180.8)).toBeCloseTo(1.6, 9);
    expect(at(90)).toBeCloseTo(178.4, 9);
    expect(at(-90)).toBeCloseTo(178.4, 9);
  });
});

test('the arc runs between the lines, its arrowheads have tip and heel on it', () => {
  const made = explode(
    angular(
      [
        [0, 0],
        [50, 0],
      ],
      [
        [0, 0],
        [0, 50],
      ],
      [30, 30],
    ),
    DEFAULT_STYLE,
  );
  const arc = made.entities.find((mark): mark is Arc => mark.kind === 'arc')!;
  expect(arc).toMatchObject({ center: [0, 0], start: 0, end: 90 });
  expect(arc.radius).toBeCloseTo(Math.hypot(30, 30), 9);
  for (const { corners } of made.entities.filter((mark): mark is Solid => mark.kind === 'solid')) {
    const [tip, a, b] = corners as readonly [Pt, Pt, Pt];
    expect(Math.hypot(...tip)).toBeCloseTo(arc.radius, 9);
    expect(Math.hypot((a[0] + b[0]) / 2, (a[1] + b[1]) / 2)).toBeCloseTo(arc.radius, 1);
    expect(Math.min(a[0], a[1])).toBeGreaterThan(0); // inside the sector
  }
});

test('arrowheads and text of a narrow angle stand outside it', () => {
  const made = explode(
    angular(
      [
        [0, 0],
        [50, 0],
      ],
      [[0, 0], ray([0, 0], 1.6, 50)],
      ray([0, 0], 0.8, 60),
    ),
    DEFAULT_STYLE,
  );
  const heads = made.entities.filter((mark): mark is Solid => mark.kind === 'solid');
  expect(heads[0]!.corners[1][1]).toBeLessThan(0);
  expect(heads[1]!.corners[1][1]).toBeGreaterThan(60 * Math.sin((1.6 * Math.PI) / 180));
  expect(made.textAt[1]).toBeGreaterThan(4);
});

test('any two lines, any sector: the value is the angle that was built', () => {
  const angle = fc.double({ min: 0.1, max: 179.9, noNaN: true });
  const turn = fc.double({ min: 0, max: 360, noNaN: true });
  fc.assert(
    fc.property(angle, turn, fc.double({ min: 0.02, max: 0.98, noNaN: true }), (value, start, share) => {
      const made = explode(
        angular(
          [VERTEX, ray(VERTEX, start, 70)],
          [ray(VERTEX, start + value, -30), ray(VERTEX, start + value, 60)],
          ray(VERTEX, start + share * value, 40),
        ),
        DEFAULT_STYLE,
      );
      expect(made.value).toBeCloseTo(value, 8);
      if (made.def.type !== 'angular') throw new Error('not an angle');
      expect(turned(made.def)).toBeCloseTo(value, 6);
    }),
    { seed: 160, numRuns: 500 },
  );
});

test('what cannot be an angle is an error that says why', () => {
  expect(() =>
    explode(
      angular(
        [
          [0, 0],
          [9, 0],
        ],
        [
          [0, 5],
          [9, 5],
        ],
        [4, 2],
      ),
      DEFAULT_STYLE,
    ),
  ).toThrow('parallel');
  expect(() =>
    explode(
      angular(
        [
          [0, 0],
          [9, 0],
        ],
        [
          [0, 0],
          [0, 9],
        ],
        [7, 0],
      ),
      DEFAULT_STYLE,
    ),
  ).toThrow('7, 0 of a dimension arc');
  expect(() =>
    explode(
      angular(
        [
          [0, 0],
          [9, 0],
        ],
        [
          [0, 0],
          [0, 9],
        ],
        [1, 1],
      ),
      DEFAULT_STYLE,
    ),
  ).toThrow('two arrowheads need 5 mm');
});

describe('an arc that passes beyond a measured line', () => {
  const bars = (radius: number) =>
    explode(
      angular(
        [
          [20, 0],
          [50, 0],
        ],
        [
          [0, 20],
          [0, 50],
        ],
        ray([0, 0], 45, radius),
      ),
      DEFAULT_STYLE,
    ).entities.flatMap((mark) =>
      mark.kind === 'poly' ? mark.points.map(([x, y]) => [Math.round(x * 1e6) / 1e6, Math.round(y * 1e6) / 1e6]) : [],
    );

  test('outside it: an extension line with gap and overshoot', () => {
    expect(bars(60)).toEqual([
      [51.5, 0],
      [62, 0],
      [0, 51.5],
      [0, 62],
    ]);
  });

  test('between it and the vertex: the same inwards', () => {
    expect(bars(12)).toEqual([
      [18.5, 0],
      [10, 0],
      [0, 18.5],
      [0, 10],
    ]);
  });

  test('on it: none', () => {
    expect(bars(30)).toEqual([]);
  });
});

test('text on the hollow side of an arc is clear of it at both ends', () => {
  // The lower sector: text over the arc is nearer to the vertex than the arc.
  const made = explode(angular([[0, 0], ray([0, 0], 215, 40)], [[0, 0], ray([0, 0], 325, 40)], [0, -14]), {
    ...DEFAULT_STYLE,
    textGap: 1,
  });
  const half = (4 * 0.85 * 2.5) / 2; // "110\u00b0" has four characters
  const corner = Math.hypot(half, made.textAt[1] - 1.25);
  expect(made.text).toBe('110\u00b0');
  expect(corner).toBeLessThan(13.2);
  expect(corner).toBeGreaterThan(12.8);
});
