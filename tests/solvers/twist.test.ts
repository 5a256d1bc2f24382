import { describe, expect, test } from 'vitest';
import { torsionConstant, torsionConstantExact, twistShear } from '../../lib/derive/checks/solvers/twist.ts';

describe('torsion of rectangles', () => {
  test.each([1, 1.145, 1.2, 1.5, 1.82, 2.2, 3.33, 10, 50])('the short formula is near the series, %f : 1', (ratio) => {
    const off = torsionConstant(ratio, 1) / torsionConstantExact(ratio, 1) - 1;
    expect(off).toBeLessThan(0.002);
    expect(off).toBeGreaterThan(-0.005);
    expect(torsionConstant(1, ratio)).toBe(torsionConstant(ratio, 1));
  });
});

describe('greatest shear in twist', () => {
  // Timoshenko and Goodier, Theory of Elasticity: T/(k a c²), k 0.208, 0.231, 0.246, 0.267, 0.291 (from memory).
  test.each([
    [1, 0.208],
    [1.5, 0.231],
    [2, 0.246],
    [3, 0.267],
    [5, 0.291],
  ])('%f : 1', (ratio, k) => {
    expect(Math.abs(1 / twistShear(1, ratio, 1) / ratio - k)).toBeLessThan(0.0006);
  });
});
