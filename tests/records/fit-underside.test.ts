import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { leastSquares } from '../../lib/geometry/least-squares.ts';
import type { Surface } from '../../lib/geometry/surface.ts';
import { fitUnderside } from '../../lib/records/fit-underside.ts';
import { randomFrom } from '../tables/random.ts';
import { fitted, NOMINAL, normalFrom, PLACES, readingsOf, SIZE } from './readings.ts';

const surfaceOf = (left: readonly number[], right: readonly number[]): Surface => ({
  take: 'lowest',
  planes: [
    { name: 'left', a: left[0]!, b: left[1]!, c: left[2]! },
    { name: 'right', a: right[0]!, b: right[1]!, c: right[2]! },
  ],
});

const half = (sign: 1 | -1) =>
  fc.tuple(
    fc.double({ min: -5e-4, max: 5e-4, noNaN: true }),
    fc.double({ min: 0.03, max: 0.08, noNaN: true }).map((b) => sign * b),
    fc.double({ min: 55, max: 58, noNaN: true }),
  );

describe('planes through readings', () => {
  test('without noise any two planes come back to 1e-9', () => {
    fc.assert(
      fc.property(half(1), half(-1), (left, right) => {
        const truth = surfaceOf(left, right);
        const { surface, stations, planes } = fitted(readingsOf(truth));
        surface.planes.forEach((plane, k) => {
          expect(Math.abs(plane.a - truth.planes[k]!.a) * SIZE.length).toBeLessThan(1e-9);
          expect(Math.abs(plane.b - truth.planes[k]!.b) * SIZE.width).toBeLessThan(1e-9);
          expect(Math.abs(plane.c - truth.planes[k]!.c)).toBeLessThan(1e-9);
        });
        expect(Math.max(...stations.map(({ residual }) => Math.abs(residual)))).toBeLessThan(1e-9);
        for (const { twist } of planes) expect(Math.abs(twist!)).toBeLessThan(1e-9);
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  // Source: variance of a least-squares slope, σ²/Σ(u - mean)² on a grid whose two directions are square to each other.
  test('with noise they are off by as much as its closed form says', () => {
    const sigma = 0.2;
    const own = PLACES.filter(([, , side]) => side === 'left');
    const about = (k: 0 | 1): number => {
      const mean = own.reduce((sum, p) => sum + p[k], 0) / own.length;
      return own.reduce((sum, p) => sum + (p[k] - mean) ** 2, 0);
    };
    const expected = { a: sigma / Math.sqrt(about(0)), b: sigma / Math.sqrt(about(1)) };
    const truth = NOMINAL.planes[0]!;
    const random = randomFrom(11);
    const runs = 2000;
    const sums = { a: 0, b: 0, rms: 0 };
    for (let run = 0; run < runs; run++) {
      const fit = fitted(readingsOf(NOMINAL, () => sigma * normalFrom(random)));
      const { plane, spread, rms } = fit.planes[0]!;
      sums.a += (plane.a - truth.a) ** 2;
      sums.b += (plane.b - truth.b) ** 2;
      sums.rms += rms ** 2;
      expect(spread.a * sigma).toBeCloseTo(expected.a, 12);
      expect(spread.b * sigma).toBeCloseTo(expected.b, 12);
      expect(spread.middle).toBeCloseTo(1 / Math.sqrt(own.length), 12);
    }
    // The root of a mean of 2000 squares is itself uncertain by 1/√(2·2000) = 1.6 %; 6 % is nearly four times that.
    expect(Math.sqrt(sums.a / runs) / expected.a).toBeGreaterThan(0.94);
    expect(Math.sqrt(sums.a / runs) / expected.a).toBeLessThan(1.06);
    expect(Math.sqrt(sums.b / runs) / expected.b).toBeGreaterThan(0.94);
    expect(Math.sqrt(sums.b / runs) / expected.b).toBeLessThan(1.06);
    // Residuals of n readings about three unknowns: σ²(n - 3)/n.
    expect(sums.rms / runs / (sigma ** 2 * ((own.length - 3) / own.length))).toBeCloseTo(1, 1);
  });

  test('twist is the difference of the slopes at the two ends', () => {
    // 0.8 mm more at the left edge of the far end, growing evenly along and across.
    const rate = 0.8 / (SIZE.length * (SIZE.width / 2));
    const readings = readingsOf(NOMINAL);
    const stations = readings.stations.map((s) =>
      s.side === 'left' ? { ...s, thickness: s.thickness - rate * s.along * s.across } : s,
    );
    const { planes } = fitted({ ...readings, stations });
    expect(planes[0]!.twist).toBeCloseTo(-0.8, 9);
    expect(planes[1]!.twist).toBeCloseTo(0, 9);
  });

  test('a step at the ridge is read on both sides of it, and without sides goes to both halves', () => {
    const stepped = surfaceOf([0, 0.05625, 57.5], [0, -0.05625, 57]);
    const { surface } = fitted(readingsOf(stepped));
    expect(surface.planes.map((p) => p.c)).toEqual([expect.closeTo(57.5, 9), expect.closeTo(57, 9)]);
    const readings = readingsOf(NOMINAL);
    const unsided = readings.stations.map(({ side: _, ...station }) => station);
    const fit = fitted({ ...readings, stations: unsided });
    expect(fit.planes.map((p) => p.readings)).toEqual([18, 18]);
  });

  test('a flat top is one plane', () => {
    const flat: Surface = { take: 'lowest', planes: [{ name: 'flat', a: 1e-4, b: 2e-4, c: 30 }] };
    const { surface, planes } = fitted(readingsOf(flat), {
      take: 'lowest',
      planes: [{ name: 'flat', a: 0, b: 0, c: 30 }],
    });
    expect(surface.planes[0]!.b).toBeCloseTo(2e-4, 12);
    expect(planes[0]!.readings).toBe(30);
  });
});

describe('readings that make no plane', () => {
  const whys = (keep: (along: number, across: number) => boolean) => {
    const { date, stations } = readingsOf(NOMINAL);
    const fit = fitUnderside({ date, stations: stations.filter((s) => keep(s.along, s.across)) }, NOMINAL, SIZE);
    return 'surface' in fit ? [] : fit.map(({ plane, why }) => `${plane}: ${why}`);
  };

  test('too few, or all on one line', () => {
    expect(whys((_, across) => across > 0)).toEqual(['left: few']);
    expect(whys((along) => along === 355.6)).toEqual(['left: line along y', 'right: line along y']);
    expect(whys((_, across) => across > 0 || across === -254)).toEqual(['left: line along x']);
    const slanting = (along: number, across: number): boolean =>
      across > 0 || Math.abs((along - 1066.8) / 711.2 - (across + 254) / 127) < 1e-9;
    expect(whys(slanting)).toEqual(['left: line']);
    expect(whys(() => true)).toEqual([]);
  });

  test('a half that is thicker at its edge, and one that runs out', () => {
    const valley = fitUnderside(readingsOf(surfaceOf([0, -0.05, 57], [0, 0.05, 57])), NOMINAL, SIZE);
    expect(valley).toMatchObject([{ why: 'valley' }, { why: 'valley' }]);
    const thin = fitUnderside(readingsOf(surfaceOf([0, 0.112, 57], [0, -0.05, 57])), NOMINAL, SIZE);
    expect(thin).toMatchObject([{ plane: 'left', why: 'thin' }]);
  });
});

test('columns that say nothing new have no fit', () => {
  expect(
    leastSquares(
      [
        [1, 1, 1],
        [2, 2, 2],
      ],
      [1, 2, 3],
    ),
  ).toBeUndefined();
  expect(
    leastSquares(
      [
        [1, 1, 1],
        [0, 1, 2],
      ],
      [1, 3, 5],
    )!.coefficients,
  ).toEqual([expect.closeTo(1, 12), expect.closeTo(2, 12)]);
});
