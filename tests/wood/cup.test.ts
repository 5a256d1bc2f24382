import { expect, test } from 'vitest';
import { cup } from '../../lib/wood/cup.ts';

// Red oak, 200 mm wide, 100 mm from the pith, 12 to 6 %: strains of the green size, 6/30 of S 4.0 and 8.6. Computed
// once, independently of this code: 0.7199 mm, small angles 0.92 mm.
const dry = { width: 200, pithDistance: 100, radialStrain: -0.008, tangentialStrain: -0.0172 };

test('a drying board turns hollow on the bark side', () => {
  expect(cup(dry)).toBeCloseTo(0.7199, 4);
});

test('a wetted board turns hollow on the pith side', () => {
  expect(cup({ ...dry, radialStrain: 0.008, tangentialStrain: 0.017 })).toBeLessThan(0);
});

test('far from the pith it comes down to the small-angle form (e_R - e_T) w² / 4d', () => {
  const far = { ...dry, pithDistance: 5000 };
  const small = ((dry.radialStrain - dry.tangentialStrain) * 200 ** 2) / (4 * 5000);
  expect(cup(far) / small).toBeGreaterThan(0.99);
  expect(cup(far) / small).toBeLessThan(1.01);
  expect(((dry.radialStrain - dry.tangentialStrain) * 200 ** 2) / (4 * 100)).toBeCloseTo(0.92, 2);
});

test('halving the width nearly quarters it', () => {
  const far = { ...dry, pithDistance: 2000 };
  expect(cup(far) / cup({ ...far, width: 100 })).toBeCloseTo(4, 1);
});

test('equal strains leave a flat board flat', () => {
  expect(cup({ ...dry, radialStrain: -0.01, tangentialStrain: -0.01 })).toBeCloseTo(0, 12);
});

test('a board without width is refused', () => {
  expect(() => cup({ ...dry, width: 0 })).toThrow('width is 0 mm; it must be above 0 mm');
});
