import { expect, test } from 'vitest';
import { equilibriumMoisture } from '../../lib/wood/equilibrium-moisture.ts';
import { FURNITURE_LUMBER_MOISTURE, INDOOR_MOISTURE } from '../../lib/wood/indoor-moisture.ts';

// FPL-GTR-190 table 13-2, from memory: average, low and high.
test.each([
  ['most', 8, 6, 10],
  ['drySouthwest', 6, 4, 9],
  ['dampWarmCoast', 11, 8, 13],
] as const)('%s: %f %%, from %f to %f %%', (region, average, low, high) => {
  expect(INDOOR_MOISTURE[region].value).toEqual({ average, low, high });
  expect(INDOOR_MOISTURE[region].status).toBe('memory');
});

test('furniture lumber at 6 to 8 % (FPL-GTR-190 ch. 13) suits a room at 30 to 45 % humidity', () => {
  expect(FURNITURE_LUMBER_MOISTURE.value).toEqual({ low: 6, high: 8 });
  expect(FURNITURE_LUMBER_MOISTURE.status).toBe('read');
  expect(equilibriumMoisture(21, 28)).toBeLessThan(6);
  expect(equilibriumMoisture(21, 30)).toBeGreaterThan(6);
  expect(equilibriumMoisture(21, 45)).toBeGreaterThan(8);
});
