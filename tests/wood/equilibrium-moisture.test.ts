import { describe, expect, test } from 'vitest';
import { equilibriumMoisture } from '../../lib/wood/equilibrium-moisture.ts';
import { HUMIDITIES, TABLE_4_2 } from './table-4-2.ts';

const celsius = (fahrenheit: number) => (fahrenheit - 32) / 1.8;

const cells = TABLE_4_2.flatMap(({ fahrenheit, moisture }) =>
  HUMIDITIES.map((humidity, i) => ({ fahrenheit, humidity, printed: moisture[i]! })),
);

describe('Eq 4-5 against printed table 4-2 (FPL-GTR-190)', () => {
  test('the table is whole: 190 cells that rise with humidity', () => {
    expect(cells).toHaveLength(190);
    for (const { moisture } of TABLE_4_2) {
      expect(moisture).toHaveLength(19);
      expect([...moisture].sort((a, b) => a - b)).toEqual(moisture);
    }
  });

  test('every cell within 0.07, 184 round to the printed figure', () => {
    const off = cells.filter(
      ({ fahrenheit, humidity, printed }) =>
        Math.abs(equilibriumMoisture(celsius(fahrenheit), humidity) - printed) > 0.07,
    );
    expect(off).toEqual([]);
    const equal = cells.filter(
      ({ fahrenheit, humidity, printed }) =>
        Number(equilibriumMoisture(celsius(fahrenheit), humidity).toFixed(1)) === printed,
    );
    expect(equal).toHaveLength(184);
  });
});

// Computed from Eq 4-5 once, independently of this code.
test.each([
  [20, 30, 6.1882],
  [20, 40, 7.7224],
  [20, 50, 9.2711],
  [20, 65, 11.9963],
  [20, 80, 16.0371],
  [25, 35, 6.8606],
  [10, 60, 11.2441],
  [30, 75, 13.9943],
  [21.1111, 25, 5.3602],
])('at %f °C and %f %% wood settles at %f %%', (temperature, humidity, moisture) => {
  expect(equilibriumMoisture(temperature, humidity)).toBeCloseTo(moisture, 4);
});

// Rule of thumb in trade columns: 30 % humidity gives 6 % moisture, 50 gives 9, 65 gives 12, 80 gives 16.
test.each([
  [30, 6],
  [50, 9],
  [65, 12],
  [80, 16],
])('rule of thumb: %f %% humidity, about %f %%', (humidity, moisture) => {
  expect(Math.round(equilibriumMoisture(21, humidity))).toBe(moisture);
});

test('dry air dries wood out', () => {
  expect(equilibriumMoisture(20, 0)).toBe(0);
});

test('outside its range it says which value and which range', () => {
  expect(() => equilibriumMoisture(20, 100)).toThrow(
    new RangeError('relative humidity is 100 %; it must be 0 % to 99 %'),
  );
  expect(() => equilibriumMoisture(20, -1)).toThrow('relative humidity is -1 %');
  expect(() => equilibriumMoisture(70, 40)).toThrow(
    new RangeError('air temperature is 70 °C; it must be -1.2 °C to 49 °C'),
  );
  expect(() => equilibriumMoisture(20, Number.NaN)).toThrow('relative humidity is NaN %');
});
