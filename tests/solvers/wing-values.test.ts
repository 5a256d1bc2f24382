import { describe } from 'vitest';
import type { Wing } from '../../lib/derive/checks/solvers/wing.ts';
import { tipDeflection } from '../../lib/derive/checks/solvers/wing-deflection.ts';
import { wingPeak } from '../../lib/derive/checks/solvers/wing-stress.ts';
import { wingWidths } from '../../lib/derive/checks/solvers/wing-width.ts';
import { testValues } from './check-values.ts';

// Black cherry, E_L 10,300 MPa, E_T 885.8; 127 mm from the bearer end to the long edge, 28.575 mm thick there.
const cherry = { reach: 127, tip: 28.575, root: 35.71875, along: 10_300, across: 885.8 };
const widths = wingWidths(cherry, 'middle of an edge')!;
const ofBreadth = (breadth: number): Wing => ({ ...cherry, breadth, e: 885.8 });
const LEAN = { kind: 'tip', force: 1000 } as const;

const plain: Wing = { reach: 350, breadth: 300, tip: 20, root: 45, e: 650 };
const PUSH = { kind: 'tip', force: 300 } as const;
const steep: Wing = { ...plain, tip: 12, root: 50 };

describe('wings', () => {
  testValues([
    {
      source: 'fitted rule',
      status: 'computed',
      unit: 'mm or MPa',
      tolerance: { rel: 1e-6 },
      rows: [
        ['demo.B.wing.beffDeflection', 400.3464, () => widths.deflection],
        ['demo.B.wing.beffStress', 424.5319, () => widths.stress],
        ['demo.B.wing.ruleDeflection1kN', 0.5976716, () => tipDeflection(ofBreadth(widths.deflection), LEAN)],
        ['demo.B.wing.ruleStress1kN', 1.406864, () => wingPeak(ofBreadth(widths.stress), LEAN).stress],
      ],
    },
    {
      source: 'closed form; quadrature agrees to 1e-10, a frame of 64 members to 1.2e-4',
      status: 'computed',
      unit: 'mm',
      tolerance: { rel: 1e-7 },
      rows: [
        ['ind.B.taper.tip', 5.1192236, () => tipDeflection(plain, PUSH)],
        ['ind.B.taper.uniform', 0.97684737, () => tipDeflection(plain, { kind: 'even', perLength: 0.5 })],
        [
          'ind.B.taper.selfWeight',
          0.090103766,
          () => tipDeflection(plain, { kind: 'own weight', perVolume: 5.886e-6 }),
        ],
        ['ind.B.taper.nearUniform', 32.612683, () => tipDeflection({ ...plain, root: 20.1 }, PUSH)],
        ['ind.B.taper.constant', 9.7720798, () => tipDeflection({ ...plain, tip: 30, root: 30 }, PUSH)],
      ],
    },
    {
      source: 'a h0/(h1 - h0) and 3 P a/[2 b h0 (h1 - h0)]',
      status: 'computed',
      unit: 'mm from the tip, or MPa',
      tolerance: { rel: 1e-6 },
      rows: [
        ['ind.B.taper.peakPlace', 110.5263, () => wingPeak(steep, PUSH).at],
        ['ind.B.taper.peakStress', 1.151316, () => wingPeak(steep, PUSH).stress],
      ],
    },
  ]);
});
