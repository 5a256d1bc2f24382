import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { oneSidedCup, staveCup, staveCupSmall } from '../../lib/derive/checks/solvers/cup-depth.ts';
import { wedgeAngleChange, wedgeAngleChangeSmall } from '../../lib/derive/checks/solvers/wedge-angle.ts';
import { shoulderGap, widthChange } from '../../lib/derive/checks/solvers/width-change.ts';

const RUN = { seed: 7_350, numRuns: 300 };
const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('width', () => {
  test('says whether the coefficient holds where it is used', () => {
    const top = { width: 1000, perPercent: 0.0025 };
    expect(widthChange({ ...top, from: 6, to: 14 })).toMatchObject({ coefficientHolds: true });
    expect(widthChange({ ...top, from: 14, to: 5.9 })).toMatchObject({ coefficientHolds: false });
    expect('byShrinkage' in widthChange({ ...top, from: 6, to: 14 })).toBe(false);
  });

  test('by both equations is alike about 10 %', () => {
    fc.assert(
      fc.property(mm(50, 1500), mm(3, 12), mm(-2, 2), (width, shrinkage, by) => {
        fc.pre(Math.abs(by) > 0.1);
        const perPercent = shrinkage / (3000 - 20 * shrinkage);
        const change = widthChange({ width, perPercent, shrinkage, from: 10, to: 10 + by });
        expect(change.byShrinkage! / change.byCoefficient).toBeCloseTo(1, 9);
      }),
      RUN,
    );
  });

  test('back and forth cancels; a drier post opens a gap as a damper one does', () => {
    const there = widthChange({ width: 900, perPercent: 0.0025, from: 7, to: 11 }).byCoefficient;
    expect(there + widthChange({ width: 900, perPercent: 0.0025, from: 11, to: 7 }).byCoefficient).toBe(0);
    expect(shoulderGap(80, 0.0025, -4)).toBe(shoulderGap(80, 0.0025, 4));
  });
});

describe('the slope of a wedge', () => {
  test('small and exact forms agree for small changes', () => {
    fc.assert(
      fc.property(
        mm(0.5, 20),
        mm(0.001, 0.003),
        mm(0.001, 0.005),
        mm(-0.1, 0.1),
        (angle, thick, wide, moistureChange) => {
          const wedge = { angle, thick, wide, moistureChange };
          expect(Math.abs(wedgeAngleChange(wedge) - wedgeAngleChangeSmall(wedge))).toBeLessThan(1e-5);
        },
      ),
      RUN,
    );
  });

  test('stays when thickness and width move alike', () => {
    expect(wedgeAngleChange({ angle: 5, thick: 0.002, wide: 0.002, moistureChange: 6 })).toBeCloseTo(0, 12);
  });
});

describe('cup', () => {
  const staves = fc.record({
    width: mm(30, 250),
    ringRadius: mm(60, 1000),
    tangential: mm(0.002, 0.004),
    radial: mm(0.001, 0.0019),
    moistureChange: mm(-8, -0.5),
  });

  test('by the small-angle form is never below the exact one', () => {
    fc.assert(
      fc.property(staves, (s) => {
        expect(staveCupSmall(s)).toBeGreaterThanOrEqual(staveCup(s) * (1 - 1e-9));
        expect(staveCup(s)).toBeGreaterThan(0);
      }),
      RUN,
    );
  });

  test('grows with the width, falls with the distance from the pith', () => {
    fc.assert(
      fc.property(staves, mm(1, 2), (s, f) => {
        expect(staveCup({ ...s, width: s.width * f })).toBeGreaterThanOrEqual(staveCup(s) * (1 - 1e-9));
        expect(staveCupSmall({ ...s, ringRadius: s.ringRadius * f })).toBeLessThanOrEqual(staveCupSmall(s));
      }),
      RUN,
    );
  });

  test('of one drier face grows with the square of the width', () => {
    const top = { width: 500, thickness: 30, perPercent: 0.0025, moistureDifference: 1 };
    expect(oneSidedCup({ ...top, width: 1000 }) / oneSidedCup(top)).toBeCloseTo(4, 12);
    expect(oneSidedCup({ ...top, moistureDifference: -1 })).toBe(oneSidedCup(top));
  });
});
