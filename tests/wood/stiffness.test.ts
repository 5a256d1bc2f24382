import { expect, test } from 'vitest';
import { SPECIES } from '../../lib/wood/species-list.ts';
import { SHEAR_FREE_FACTOR, SHEAR_MODULUS_FALLBACK } from '../../lib/wood/stiffness.ts';

// FPL-GTR-282 table 5-3, footnote c: add 10 % to the printed modulus where shear has a term of its own.
test('a tenth is added for a modulus free of shear', () => {
  expect(SHEAR_FREE_FACTOR).toMatchObject({ value: 1.1, status: 'read' });
});

test('without elastic ratios the shear modulus is a sixteenth, which lies among the printed ratios', () => {
  expect(SHEAR_MODULUS_FALLBACK).toMatchObject({ value: 0.0625, status: 'read' });
  const ratios = SPECIES.flatMap(({ gltOverEl }) => gltOverEl?.value ?? []);
  expect(Math.min(...ratios)).toBeLessThan(0.0625);
  expect(Math.max(...ratios)).toBeGreaterThan(0.0625);
});
