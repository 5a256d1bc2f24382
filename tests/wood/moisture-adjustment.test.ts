import { expect, test } from 'vitest';
import { atMoisture, bendingAtMoisture } from '../../lib/wood/moisture-adjustment.ts';
import { speciesById } from '../../lib/wood/species-list.ts';

test('white ash at 8 %, worked in FPL-GTR-282 p. 5-34: 103,000 and 66,000 kPa give 119,500 kPa', () => {
  const strength = atMoisture(103000, 66000, 8, 24);
  expect(strength).toBeCloseTo(119472.6, 1);
  expect(Math.round(strength / 500) * 500).toBe(119500);
});

test('at 12 % nothing changes; at the intersection it is the green value', () => {
  const ash = speciesById('white-ash');
  expect(bendingAtMoisture(ash, 'mor', 12)!.value).toBe(106.2);
  expect(bendingAtMoisture(ash, 'mor', 24)!.value).toBeCloseTo(65.5, 9);
  expect(bendingAtMoisture(speciesById('cherry'), 'moe', 25)!.value).toBeCloseTo(9032, 6);
});

// FPL-GTR-282 table 5-13 (public copy): white ash 24, yellow birch 27, Douglas-fir 24, others 25.
test.each([
  ['white-ash', 24],
  ['yellow-birch', 27],
  ['douglas-fir', 24],
  ['cherry', 25],
  ['teak', 25],
] as const)('%s meets the green value at %i %%', (id, moisture) => {
  expect(speciesById(id).intersectionMoisture!.value).toBe(moisture);
});

test('a caution on the value stays with the result', () => {
  expect(bendingAtMoisture(speciesById('white-ash'), 'mor', 8)!.caution).toMatch(/15,000 psi/);
  expect(bendingAtMoisture(speciesById('white-ash'), 'moe', 8)!.caution).toBeUndefined();
});

test('without the green value there is no answer; above the intersection it refuses', () => {
  const { morGreen: _, ...bare } = speciesById('cherry');
  expect(bendingAtMoisture(bare, 'mor', 8)).toBeUndefined();
  expect(() => atMoisture(85, 55, 26)).toThrow(new RangeError('moisture is 26 %; it must be 0 % to 25 %'));
});
