import { describe, expect, test } from 'vitest';
import { density } from '../../lib/wood/density.ts';
import { SPECIES_IDS } from '../../lib/wood/species-id.ts';
import { speciesById } from '../../lib/wood/species-list.ts';

test('cherry is 560 kg/m³ at 12 %; a dealer prints 561', () => {
  expect(density(speciesById('cherry'))).toEqual({ value: 560, status: 'computed', source: 'FPL-GTR-282 Eq 4-14' });
  expect(density(speciesById('cherry'), 12).value).toBe(560);
});

test('at 12 % it is the tabled figure of each wood', () => {
  for (const id of SPECIES_IDS) {
    const tabled = speciesById(id).density12;
    if (tabled) expect(density(speciesById(id), 12).value, id).toBeCloseTo(tabled.value, 9);
  }
});

describe('at other moistures', () => {
  // By hand for cherry, S_v 11.5: volume at M over green is 1 - 0.115 (1 - M/30), so 0.931 at 12 %.
  test.each([
    [0, (500 * 0.931) / 0.885],
    [8, ((500 * 0.931) / (1 - (0.115 * 22) / 30)) * 1.08],
    [30, 500 * 0.931 * 1.3],
  ])('cherry at %f %%', (moisture, expected) => {
    expect(density(speciesById('cherry'), moisture).value).toBeCloseTo(expected, 8);
  });

  test('at fiber saturation it comes near the printed green specific gravity', () => {
    for (const id of SPECIES_IDS) {
      const wood = speciesById(id);
      const basic = density(wood, 30).value / 1300;
      expect(Math.abs(basic - wood.specificGravityGreen!.value), id).toBeLessThan(0.03);
    }
  });

  test('it does not jump at 12 %', () => {
    const walnut = speciesById('walnut');
    expect(density(walnut, 12 + 1e-9).value).toBeCloseTo(density(walnut, 12).value, 5);
  });

  test('beyond fiber saturation it refuses', () => {
    expect(() => density(speciesById('cherry'), 31)).toThrow(
      new RangeError('moisture is 31 %; it must be 0 % to 30 %'),
    );
    expect(() => density(speciesById('cherry'), -1)).toThrow('moisture is -1 %');
  });
});

test('a wood without printed figure at 12 % gets it from the green one, and says so (Eq 4-13)', () => {
  const teak = density(speciesById('teak'));
  expect(teak.value).toBeCloseTo((1120 * 0.55) / (1 - 0.265 * 0.55 * 0.6), 9);
  expect(teak.caution).toMatch(/Eq 4-13/);
  expect(density(speciesById('walnut')).caution).toBeUndefined();
});

test('a wood without any specific gravity has no density', () => {
  const { specificGravity12: _dry, specificGravityGreen: _green, ...bare } = speciesById('cherry');
  expect(() => density(bare)).toThrow('black cherry has no specific gravity');
});
