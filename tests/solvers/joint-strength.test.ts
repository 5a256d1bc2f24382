import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { tenonFactor } from '../../lib/derive/checks/solvers/joint-factors.ts';
import { jointWarnings } from '../../lib/derive/checks/solvers/joint-range.ts';
import { type Tenon, tenonStrength, tenonStress } from '../../lib/derive/checks/solvers/joint-strength.ts';
import { jointUse, OFTEN_LIMITS } from '../../lib/derive/checks/solvers/joint-use.ts';

const RUN = { seed: 7_310, numRuns: 300 };
const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const tenons: fc.Arbitrary<Tenon> = fc.record({
  depths: fc.tuple(mm(15, 60), mm(15, 60)),
  height: mm(20, 100),
  thickness: mm(6, 20),
  shear: mm(6, 18),
  bending: mm(50, 140),
});
const LOOSE = { loose: true, ends: 'round', flatsGlued: true } as const;

describe('stress in a tenon', () => {
  test('reaches the strength of the wood just when the moment reaches that of the joint', () => {
    fc.assert(
      fc.property(tenons, (t) => {
        const { glue, tenon } = tenonStrength(t);
        expect(tenonStress(t, glue).glue / t.shear).toBeCloseTo(1, 9);
        expect(tenonStress(t, tenon).tenon / t.bending).toBeCloseTo(1, 9);
      }),
      RUN,
    );
  });

  test('adds shear as a vector: alone V/2lh, with twist between the larger and the sum', () => {
    fc.assert(
      fc.property(tenons, mm(1e3, 1e6), mm(10, 5000), (t, moment, shear) => {
        const alone = shear / (2 * Math.min(...t.depths) * t.height);
        expect(tenonStress(t, 0, shear).glue / alone).toBeCloseTo(1, 9);
        const [twist, both] = [tenonStress(t, moment).glue, tenonStress(t, moment, shear).glue];
        expect(both).toBeGreaterThanOrEqual(Math.max(twist, alone) * (1 - 1e-9));
        expect(both).toBeLessThanOrEqual((twist + alone) * (1 + 1e-9));
      }),
      RUN,
    );
  });

  test('of a square cheek, by hand: 10 x 10 mm, 1000 N mm and 100 N', () => {
    // Twist 3 M/(l h √(l² + h²)) = 2.1213 MPa at 45°: 1.5 each way; shear 0.5 along the height.
    const t: Tenon = { depths: [10], height: 10, thickness: 4, shear: 10, bending: 80 };
    expect(tenonStress(t, 1000).glue).toBeCloseTo(2.1213, 4);
    expect(tenonStress(t, 1000, 100).glue).toBeCloseTo(Math.hypot(1.5, 2), 9);
  });
});

describe('use of a joint', () => {
  test('grows with the moment and the shear, falls with a bigger tenon', () => {
    fc.assert(
      fc.property(tenons, mm(1e3, 1e6), mm(0, 3000), mm(1, 2), (t, moment, shear, f) => {
        const use = jointUse(t, LOOSE, moment, shear).use;
        const bigger = { ...t, depths: t.depths.map((d) => d * f), height: t.height * f };
        expect(jointUse(t, LOOSE, moment * f, shear).use).toBeGreaterThanOrEqual(use);
        expect(jointUse(t, LOOSE, moment, shear * f).use).toBeGreaterThanOrEqual(use);
        expect(jointUse(bigger, LOOSE, moment, shear).use).toBeLessThanOrEqual(use * (1 + 1e-12));
        expect(jointUse(t, LOOSE, -moment, -shear).use).toBe(use);
      }),
      RUN,
    );
  });

  test('counts the shallower half, and says what gives', () => {
    const t: Tenon = { depths: [40, 20], height: 40, thickness: 12, shear: 11.7, bending: 85 };
    expect(tenonStrength(t).glue).toBe(tenonStrength({ ...t, depths: [20] }).glue);
    expect(jointUse(t, LOOSE, 5e4).governs).toBe('glue');
    expect(jointUse({ ...t, thickness: 4 }, LOOSE, 5e4).governs).toBe('tenon');
    expect(tenonStrength({ ...t, thickness: 4 }).governs).toBe('tenon');
  });

  test('is without verdict here; the limits are 40 and 65 %', () => {
    expect(OFTEN_LIMITS).toMatchObject({ value: { ok: 0.4, least: 0.65 }, status: 'ours' });
  });
});

describe('factors', () => {
  test.each([
    [{ loose: false, ends: 'square', flatsGlued: true }, 1],
    [{ loose: false, ends: 'round', flatsGlued: true }, 0.87],
    [{ loose: true, ends: 'square', flatsGlued: true }, 0.75],
    [{ loose: true, ends: 'round', flatsGlued: true }, 0.75],
    [{ loose: true, ends: 'round', flatsGlued: false }, 0.75 * 0.87],
  ] as const)('%o: %f', (kind, factor) => {
    expect(tenonFactor(kind)).toBeCloseTo(factor, 12);
  });
});

describe('warnings', () => {
  const tested = { depths: [38, 38], height: 44, acrossGrain: false, lowerShoulder: 10 };

  test('are none within what was tested', () => {
    expect(jointWarnings(tested)).toEqual([]);
  });

  test('name each size outside, both halves, with its range and source', () => {
    const found = jointWarnings({ depths: [10, 55], height: 80, acrossGrain: true, lowerShoulder: 4 });
    expect(found.map((w) => [w.about, w.value, w.low, w.high])).toEqual([
      ['depth', 10, 15, 50],
      ['depth', 55, 15, 50],
      ['height', 80, 20, 50],
      ['across the grain', 80, undefined, 75],
      ['lower shoulder', 4, 5, undefined],
    ]);
    for (const { source } of found) expect(source).not.toBe('');
  });

  test('speak of equal halves once; the tall stretcher tenon only of its height', () => {
    expect(jointWarnings({ ...tested, depths: [12, 12] })).toHaveLength(1);
    expect(jointWarnings({ ...tested, height: 69.85, acrossGrain: true }).map((w) => w.about)).toEqual(['height']);
  });
});
