import { inRange } from './in-range.ts';

/** Coefficients of 1, T and T², T in °C: FPL-GTR-282 p. 4-3 (public copy), the same in a second copy. */
const W = [349, 1.29, 0.0135] as const;
const K = [0.805, 0.000736, -0.00000273] as const;
const K1 = [6.27, -0.00938, -0.000303] as const;
const K2 = [1.91, 0.0407, -0.000293] as const;

const quadratic = ([a, b, c]: readonly [number, number, number], t: number): number => a + b * t + c * t * t;

/**
 * Moisture in percent that wood settles at in still air: Eq 4-5. Within 0.055 of printed table 4-2.
 *
 * @param celsius air temperature, -1.2 to 49 °C: the range of table 4-2 (30 to 120 °F), against which it was tried
 * @param humidityPercent relative humidity, 0 to 99 %
 */
export function equilibriumMoisture(celsius: number, humidityPercent: number): number {
  inRange('air temperature', celsius, -1.2, 49, ' °C');
  const h = inRange('relative humidity', humidityPercent, 0, 99, ' %') / 100;
  const kh = quadratic(K, celsius) * h;
  const k1 = quadratic(K1, celsius);
  const k2 = quadratic(K2, celsius);
  const second = k1 * k2 * kh * kh;
  return (1800 / quadratic(W, celsius)) * (kh / (1 - kh) + (k1 * kh + 2 * second) / (1 + k1 * kh + second));
}
