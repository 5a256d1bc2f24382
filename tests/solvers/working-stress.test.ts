import { describe, expect, test } from 'vitest';
import { madisonCurve, workingShare, workingStress } from '../../lib/derive/checks/solvers/working-stress.ts';
import { testValues } from './check-values.ts';

// Black cherry: bending 85 MPa, tension across the grain 3.9 MPa.
describe('working stress', () => {
  testValues([
    {
      source: 'mean x (1 - 1.645 COV) x duration / 1.3',
      status: 'computed',
      unit: 'MPa',
      tolerance: { abs: 0.05 },
      rows: [
        ['bending, short', 48.2, () => workingStress(85, 'bending', 'short')],
        ['bending, permanent', 29.9, () => workingStress(85, 'bending', 'permanent')],
      ],
    },
    {
      source: 'mean x (1 - 1.645 COV) x duration / 1.3',
      status: 'computed',
      unit: 'MPa',
      tolerance: { abs: 0.005 },
      rows: [
        ['across the grain, short', 1.77, () => workingStress(3.9, 'tension across', 'short')],
        ['across the grain, permanent', 1.1, () => workingStress(3.9, 'tension across', 'permanent')],
        ['share in bending, short', 0.57, () => workingShare('bending', 'short')],
        ['share in bending, permanent', 0.35, () => workingShare('bending', 'permanent')],
        ['share across, short', 0.45, () => workingShare('tension across', 'short')],
        ['share across, permanent', 0.28, () => workingShare('tension across', 'permanent')],
      ],
    },
    {
      source: '18.3 + 108.4 t^-0.0464, Forests 12(9):1148 (2021)',
      status: 'computed',
      unit: '%',
      tolerance: { abs: 0.05 },
      rows: [
        ['10 minutes', 98.9, () => 100 * madisonCurve(600)],
        ['1 day', 82.3, () => 100 * madisonCurve(86_400)],
        ['10 years', 62, () => 100 * madisonCurve(10 * 365.25 * 86_400)],
        ['50 years', 58.9, () => 100 * madisonCurve(50 * 365.25 * 86_400)],
      ],
    },
  ]);

  test('falls with time', () => {
    const times = [1, 10, 1e3, 1e5, 1e7, 1e9].map(madisonCurve);
    expect(times).toEqual([...times].sort((a, b) => b - a));
    expect(() => madisonCurve(0)).toThrow('time is 0 s');
  });
});
