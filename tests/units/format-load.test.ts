import { describe, expect, test } from 'vitest';
import {
  formatForce,
  formatMass,
  formatMoment,
  formatMove,
  formatStress,
  KG_PER_POUND,
  MPA_PER_PSI,
  NEWTON_PER_POUND,
} from '../../lib/units/format-load.ts';

// NIST Special Publication 811 (2008), appendix B.8: lb 4.535 924 E-01 kg, lbf 4.448 222 N, psi 6.894 757 E+03 Pa,
// foot pound-force 1.355 818 N m.
describe('pounds', () => {
  test('are those of the published table', () => {
    expect(KG_PER_POUND).toBeCloseTo(0.4535924, 7);
    expect(NEWTON_PER_POUND).toBeCloseTo(4.448222, 6);
    expect(MPA_PER_PSI * 1e6).toBeCloseTo(6894.757, 3);
    expect(formatMoment(1.355818 * 41, 'in')).toBe('41 lbf ft');
  });

  test('are whole where there are many, tenths where there are few', () => {
    expect([74, 25, 1.6, 0].map((kg) => formatMass(kg, 'in'))).toEqual(['163 lb', '55 lb', '3.5 lb', '0 lb']);
    expect([300, 1000, 0].map((n) => formatForce(n, 'in'))).toEqual(['67.4 lbf', '225 lbf', '0 lbf']);
    expect([1.2, 3.86].map((mpa) => formatStress(mpa, 'in', 2))).toEqual(['174 psi', '560 psi']);
  });

  test('are rounded to the side that is asked for', () => {
    // 33.3 kg is 73.41 lb; 243 N is 54.63 lbf.
    expect((['down', 'nearest', 'up'] as const).map((how) => formatMass(33.3, 'in', how))).toEqual([
      '73 lb',
      '73 lb',
      '74 lb',
    ]);
    expect((['down', 'nearest', 'up'] as const).map((how) => formatForce(243, 'in', how))).toEqual([
      '54.6 lbf',
      '54.6 lbf',
      '54.7 lbf',
    ]);
  });
});

describe('a metric shop', () => {
  test('reads kilograms, newtons and megapascals', () => {
    expect([74.2, 9.96, 1.64].map((kg) => formatMass(kg, 'mm'))).toEqual(['74 kg', '10 kg', '1.6 kg']);
    expect(formatForce(306.9, 'mm', 'down')).toBe('306 N');
    expect(formatStress(1.752, 'mm', 2)).toBe('1.75 MPa');
    expect(formatMoment(56.2, 'mm')).toBe('56 N m');
  });
});

describe('a movement', () => {
  test('is told in tenths of a mm, or in 64ths of an inch', () => {
    expect(formatMove(5.57, 'mm')).toBe('5.6 mm');
    expect(formatMove(5.57, 'in')).toBe('7/32 in');
    expect((['down', 'up'] as const).map((how) => formatMove(6, 'in', how))).toEqual(['15/64 in', '1/4 in']);
  });

  test('is told in thousandths where it is less than 1/16 in', () => {
    expect([0.2, 0.31, 1.2, 0].map((mm) => formatMove(mm, 'in'))).toEqual(['0.008 in', '0.012 in', '0.047 in', '0 in']);
    expect(formatMove(25.4 / 16, 'in')).toBe('1/16 in');
    expect((['down', 'up'] as const).map((how) => formatMove(0.2, 'in', how))).toEqual(['0.007 in', '0.008 in']);
  });
});
