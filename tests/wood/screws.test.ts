import { describe, expect, test } from 'vitest';
import { screwWithdrawal } from '../../lib/wood/screw-withdrawal.ts';
import { leadHole, ROOT_OVER_SHANK, type ScrewGauge, SHANK_DIAMETERS, shankDiameter } from '../../lib/wood/screws.ts';
import { speciesById } from '../../lib/wood/species-list.ts';

describe('wood screws', () => {
  // FPL-GTR-282 table 8-9.
  test.each([
    [4, 2.84],
    [6, 3.51],
    [8, 4.17],
    [10, 4.83],
    [12, 5.49],
    [14, 6.15],
    [16, 6.81],
  ] as const)('number %i is %f mm in the shank', (gauge, shank) => {
    expect(shankDiameter(gauge)).toBe(shank);
  });

  test('all follow 0.060 in + 0.013 in times the number', () => {
    const gauges = Object.entries(SHANK_DIAMETERS.value);
    expect(gauges).toHaveLength(14);
    for (const [gauge, shank] of gauges) {
      expect(Math.abs(shank - (0.06 + 0.013 * Number(gauge)) * 25.4), gauge).toBeLessThan(0.006);
    }
  });

  test('a number that is not made is refused', () => {
    expect(() => shankDiameter(13 as ScrewGauge)).toThrow(/^there is no screw gauge 13; there are 4, 5, 6, /);
  });

  // FPL-GTR-190 ch. 8: root about two thirds of the shank; lead hole 90 % of it in hardwood, 70 % in softwood.
  test('number 10: lead hole 2.9 mm in hardwood, 2.25 mm in softwood', () => {
    expect(ROOT_OVER_SHANK.value * 4.83).toBeCloseTo(3.22, 9);
    expect(leadHole(shankDiameter(10), 'hardwood')).toBeCloseTo(2.898, 9);
    expect(leadHole(shankDiameter(10), 'softwood')).toBeCloseTo(2.254, 9);
  });
});

describe('withdrawal, Eq 8-10', () => {
  // Computed from the equation.
  test.each([
    ['sugar-maple', 10, 25.4, 5271.0],
    ['cherry', 8, 19, 2144.2],
    ['yellow-poplar', 12, 30, 3145.0],
  ] as const)('%s, number %i, %f mm of thread: %f N', (id, gauge, thread, load) => {
    const specificGravity12 = speciesById(id).specificGravity12!.value;
    expect(screwWithdrawal({ specificGravity12, shank: shankDiameter(gauge), thread })).toBeCloseTo(load, 1);
  });

  test('the inch form, 15,700 G² D L in pounds, is the same to half a percent', () => {
    const inch = 15700 * 0.63 ** 2 * (4.83 / 25.4) * 1 * 4.4482216;
    const metric = screwWithdrawal({ specificGravity12: 0.63, shank: 4.83, thread: 25.4 });
    expect(metric / inch).toBeCloseTo(1, 2);
  });

  test('a screw without thread in the wood is refused', () => {
    expect(() => screwWithdrawal({ specificGravity12: 0.5, shank: 4, thread: 0 })).toThrow(
      new RangeError('thread is 0 mm; it must be above 0 mm'),
    );
  });
});
