import { describe, expect, test } from 'vitest';
import {
  LIFTING_INCH,
  LIFTING_METRIC,
  liftingIndex,
  PERSON_LIFT,
  recommendedWeight,
  teamCapacity,
} from '../../lib/derive/checks/solvers/lifting.ts';
import { massOf } from '../../lib/derive/checks/solvers/mass.ts';
import { testValues } from './check-values.ts';

// Black cherry at 560 kg/m³; volumes in mm³ from the sizes of the pieces, tenons and mortises left out.
const mass = {
  top: massOf(((1016 * (57.15 + 28.575)) / 2) * 2133.6, 560),
  posts: massOf(4 * 69.85 * 82.55 * 548.48125, 560),
  bearers: massOf(2 * 762 * 57.15 * ((88.9 + 67.46875) / 2), 560),
  feet: massOf(2 * 762 * 57.15 * 76.2, 560),
  crossRails: massOf(2 * 38.1 * 127 * (508 - 82.55), 560),
  stretcher: massOf(38.1 * 127 * (1422.4 - 38.1), 560),
};
const base = mass.posts + mass.bearers + mass.feet + mass.crossRails + mass.stretcher;

// H 23 in, V 15 in, D 49 in, and 0.95 for turning.
const punchPress = {
  horizontal: 23 * 25.4,
  vertical: 15 * 25.4,
  travel: 49 * 25.4,
  turn: 0.05 / 0.0032,
  frequency: 1,
  coupling: 1,
};

describe('mass and lifting', () => {
  testValues([
    {
      source: 'volume x 560 kg/m3',
      status: 'computed',
      unit: 'kg',
      tolerance: { rel: 1e-5 },
      rows: [
        ['demo.I.mass.top', 52.03221, () => mass.top],
        ['demo.I.mass.base', 20.67086, () => base],
        ['demo.I.mass.all', 72.70306, () => mass.top + base],
        ['demo.I.mass.posts', 7.08424, () => mass.posts],
        ['demo.I.mass.bearers', 3.813372, () => mass.bearers],
        ['demo.I.mass.feet', 3.716586, () => mass.feet],
        ['demo.I.mass.crossRails', 2.30566, () => mass.crossRails],
        ['demo.I.mass.stretcher', 3.750999, () => mass.stretcher],
      ],
    },
    {
      source: 'HSE two-thirds rule, second-hand, 2 x 25 kg',
      status: 'read',
      unit: 'kg',
      tolerance: { abs: 0.5 },
      rows: [['ind.I.team2', 33, () => teamCapacity([25, 25])!]],
    },
    {
      source: 'published example, 2 x 20 kg',
      status: 'read',
      unit: 'kg',
      tolerance: { abs: 0.1 },
      rows: [['ind.I.team2x20', 26.6, () => teamCapacity([20, 20])!]],
    },
    {
      source: 'half of the sum for three, 3 x 25 kg',
      status: 'computed',
      unit: 'kg',
      tolerance: { rel: 1e-9 },
      rows: [['ind.I.team3', 37.5, () => teamCapacity([25, 25, 25])!]],
    },
    {
      source: 'NIOSH equation in inches and pounds; the manual prints 16.3 after rounding',
      status: 'computed',
      unit: 'lbf',
      tolerance: { rel: 1e-5 },
      rows: [['ind.I.niosh', 16.017, () => recommendedWeight(punchPress, LIFTING_INCH)]],
    },
  ]);
});

describe('the lifting equation', () => {
  const best = { horizontal: 250, vertical: 750, travel: 250, turn: 0, frequency: 1, coupling: 1 };

  test('the best lift is 23 kg or 51 lb', () => {
    expect(recommendedWeight(best)).toBeCloseTo(23, 9);
    expect(recommendedWeight({ ...best, horizontal: 254, vertical: 762, travel: 254 }, LIFTING_INCH)).toBeCloseTo(
      51,
      9,
    );
  });

  // Published tables of the multipliers, centimeters and degrees, rounded to 0.01.
  test.each([
    [{ horizontal: 250 }, 1],
    [{ horizontal: 300 }, 0.83],
    [{ horizontal: 400 }, 0.63],
    [{ horizontal: 500 }, 0.5],
    [{ horizontal: 600 }, 0.42],
    [{ vertical: 0 }, 0.78],
    [{ vertical: 300 }, 0.87],
    [{ vertical: 500 }, 0.93],
    [{ vertical: 700 }, 0.99],
    [{ vertical: 1000 }, 0.93],
    [{ vertical: 1500 }, 0.78],
    [{ vertical: 1750 }, 0.7],
    [{ vertical: 1760 }, 0],
    [{ travel: 400 }, 0.93],
    [{ travel: 550 }, 0.9],
    [{ travel: 1000 }, 0.87],
    [{ travel: 1450 }, 0.85],
    [{ travel: 1760 }, 0],
    [{ turn: 30 }, 0.9],
    [{ turn: 45 }, 0.86],
    [{ turn: 60 }, 0.81],
    [{ turn: 90 }, 0.71],
  ])('%o keeps %f of it', (part, share) => {
    expect(Math.abs(recommendedWeight({ ...best, ...part }) / LIFTING_METRIC.value.constant - share)).toBeLessThan(
      0.0051,
    );
  });

  test('a near load or a short way counts no better', () => {
    expect(recommendedWeight({ ...best, horizontal: 100, travel: 0 })).toBeCloseTo(23, 9);
  });

  test('the index is load over recommended weight', () => {
    expect(liftingIndex(52, 23)).toBeCloseTo(2.26, 2);
  });
});

describe('a team', () => {
  test('of one lifts what one lifts; four use equipment', () => {
    expect(teamCapacity([PERSON_LIFT.value])).toBe(25);
    expect(teamCapacity([25, 25, 25, 25])).toBeUndefined();
    expect(teamCapacity([])).toBeUndefined();
  });

  test('of two who differ lifts two thirds of their sum', () => {
    expect(teamCapacity([30, 15])).toBeCloseTo(30, 12);
  });
});
