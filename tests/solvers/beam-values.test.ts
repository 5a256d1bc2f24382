import { describe } from 'vitest';
import type { Beam, BeamLoad } from '../../lib/derive/checks/solvers/beam.ts';
import { bendBeam } from '../../lib/derive/checks/solvers/beam-bend.ts';
import { type BeamCaseName, beamCases } from '../../lib/derive/checks/solvers/beam-cases.ts';
import { CREEP_ALONG, SAG_AT_ONCE, SAG_IN_TIME } from '../../lib/derive/checks/solvers/beam-limits.ts';
import { peakMoments } from '../../lib/derive/checks/solvers/beam-peaks.ts';
import { shearDeflection } from '../../lib/derive/checks/solvers/beam-shear.ts';
import { massOf, weightOf } from '../../lib/derive/checks/solvers/mass.ts';
import { polygonSection, wedgeSection } from '../../lib/derive/checks/solvers/section.ts';
import { madisonCurve, workingStress } from '../../lib/derive/checks/solvers/working-stress.ts';
import type { Vec2 } from '../../lib/geometry/vec.ts';
import { testValues } from './check-values.ts';

// A cherry top, 2133.6 x 1016 mm, 57.15 mm thick on the center line and 28.575 at the long edges, on two lines 355.6 mm
// from its ends.
const LENGTH = 2133.6;
const WIDTH = 1016;
const wedge = wedgeSection(WIDTH, 28.575, 57.15);
const mass = massOf(wedge.area * LENGTH, 560);
const ownWeight = weightOf(mass) / LENGTH;
const top: Beam = { length: LENGTH, supports: [355.6, 1778], e: 10_300, inertia: wedge.inertia };
const cases = beamCases(top, ownWeight, { spread: 100, spot: 1000, person: 1079 / 9.81 });

const topUnder = (name: BeamCaseName) => bendBeam(top, cases.find((c) => c.name === name)!.loads);
const middle = (name: BeamCaseName): number => topUnder(name).deflectionAt(1066.8);
const tip = (name: BeamCaseName): number => topUnder(name).deflectionAt(0);

// A flat top, E 11,000 MPa, 900 x 35 mm, span 1400, overhangs 300.
const flat: Beam = { length: 2000, supports: [300, 1700], e: 11_000, inertia: (900 * 35 ** 3) / 12 };
const flatUnder = (load: BeamLoad) => bendBeam(flat, [load]);
const even: BeamLoad = { kind: 'even', perLength: 0.4 };
const center: BeamLoad = { kind: 'point', at: 1000, force: 1000 };
const end: BeamLoad = { kind: 'point', at: 0, force: 1000 };

const plain: Beam = { length: 1, supports: [0, 1], e: 1, inertia: 1 };
const shape: Vec2[] = [
  [0, 0],
  [900, 0],
  [900, 20],
  [450, 45],
  [0, 20],
];
const YEAR = 31_557_600;

describe('sections, beams and their limits', () => {
  testValues([
    {
      source: 'closed form',
      status: 'computed',
      unit: 'mm², mm, mm³ or mm⁴',
      tolerance: { rel: 1e-7 },
      rows: [
        ['demo.A.section.A', 43_548.3, () => wedge.area],
        ['demo.A.section.yc', 22.225, () => wedge.center],
        ['demo.A.section.I', 8_121_390.5, () => wedge.inertia],
        ['demo.A.section.Stop', 365_416.9, () => wedge.modulusLow],
        ['demo.A.section.Sbot', 232_538.02, () => wedge.modulusHigh],
        ['ind.A.wedge900.I', 3_317_548.1, () => polygonSection(shape).inertia],
        ['ind.A.wedge900.yc', 17.051282, () => polygonSection(shape).center],
        ['ind.A.wedge900.Stop', 194_562.97, () => polygonSection(shape).modulusLow],
        ['ind.A.wedge900.Sbot', 118_701.26, () => polygonSection(shape).modulusHigh],
        ['ind.A.flat30.I', 2_025_000, () => wedgeSection(900, 30, 30).inertia],
        ['ind.A.triangle45.I', 2_278_125, () => wedgeSection(900, 0, 45).inertia],
      ],
    },
    {
      source: 'volume x density',
      status: 'computed',
      unit: 'kg or N/m',
      tolerance: { rel: 1e-6 },
      rows: [
        ['demo.A.topMass', 52.03221, () => mass],
        ['demo.A.selfWeightPerMetre', 239.2369, () => ownWeight * 1000],
      ],
    },
    {
      source: 'closed form, down is positive',
      status: 'computed',
      unit: 'mm',
      tolerance: { rel: 1e-6 },
      rows: [
        ['demo.A.beam.selfMid', 0.1067049, () => middle('own weight')],
        ['demo.A.beam.selfTip', -0.07050146, () => tip('own weight')],
        ['demo.A.beam.selfMidLongTerm', 0.2134098, () => CREEP_ALONG.value * middle('own weight')],
        ['demo.A.beam.spread100kgMid', 0.2050748, () => middle('spread')],
        ['demo.A.beam.spread100kgTip', -0.1354958, () => tip('spread')],
        [
          'demo.A.beam.uniform500PaMid',
          0.2265791,
          () => bendBeam(top, [{ kind: 'even', perLength: 5e-4 * WIDTH }]).deflectionAt(1066.8),
        ],
        ['demo.A.beam.point1kNCentre', 0.7167313, () => middle('spot at the middle')],
        ['demo.A.beam.point1kNCentreTipRise', 0.5375485, () => -tip('spot at the middle')],
        ['demo.A.beam.point1kNEnd', 0.8959141, () => tip('spot at the end')],
        ['demo.A.beam.point1079NEnd', 0.9666913, () => tip('person at the end')],
        ['demo.A.limit.Sover600', 2.370667, () => 1422.4 * SAG_AT_ONCE.value],
        ['demo.A.limit.Sover384', 3.704167, () => 1422.4 * SAG_IN_TIME.value],
      ],
    },
    {
      source: 'moment over section modulus',
      status: 'computed',
      unit: 'MPa',
      tolerance: { rel: 1e-6 },
      rows: [
        [
          'demo.A.stress1kNCentreBottom',
          1.529212,
          () => peakMoments(topUnder('spot at the middle')).sagging.moment / wedge.modulusHigh,
        ],
        [
          'demo.A.stress1079NEndTop',
          1.050013,
          () => -peakMoments(topUnder('person at the end')).hogging.moment / wedge.modulusLow,
        ],
        [
          'demo.A.stress1079NEndBottom',
          1.65002,
          () => -peakMoments(topUnder('person at the end')).hogging.moment / wedge.modulusHigh,
        ],
      ],
    },
    {
      source: 'MOR read in a public copy of FPL-GTR-282 table 5-3, COV 16 % from memory, DOL 1 and 0.62',
      status: 'ours',
      unit: 'MPa',
      tolerance: { rel: 1e-6 },
      rows: [
        ['demo.A.limit.MORshort', 48.17538, () => workingStress(85, 'bending', 'short')],
        ['demo.A.limit.MORpermanent', 29.86874, () => workingStress(85, 'bending', 'permanent')],
      ],
    },
    {
      source: 'closed form, a frame solve agrees to 1e-15',
      status: 'computed',
      unit: 'mm or N',
      tolerance: { rel: 1e-7 },
      rows: [
        ['ind.A.overhang.uniformMid', 0.44098124, () => flatUnder(even).deflectionAt(1000)],
        ['ind.A.overhang.uniformTip', -0.26956445, () => flatUnder(even).deflectionAt(2000)],
        ['ind.A.overhang.pointMid', 1.6161616, () => flatUnder(center).deflectionAt(1000)],
        ['ind.A.overhang.pointMidTipRise', 1.038961, () => -flatUnder(center).deflectionAt(0)],
        ['ind.A.overhang.pointTip', 1.4418235, () => flatUnder(end).deflectionAt(0)],
        ['ind.A.overhang.farUplift', 214.28571, () => -flatUnder(end).reactions[1]],
      ],
    },
    {
      source: 'Wood Handbook FPL-GTR-190 table 9-1, load at mid-span and even load, simply supported',
      status: 'read',
      unit: 'k_b',
      tolerance: { rel: 1e-9 },
      rows: [
        [
          'ind.A.coeff.centreSimple',
          1 / 48,
          () => bendBeam(plain, [{ kind: 'point', at: 0.5, force: 1 }]).deflectionAt(0.5),
        ],
        [
          'ind.A.coeff.uniformSimple',
          5 / 384,
          () => bendBeam(plain, [{ kind: 'even', perLength: 1 }]).deflectionAt(0.5),
        ],
      ],
    },
    {
      source: 'SL = 18.3 + 108.4 t^-0.0464, Forests 12(9):1148 (2021)',
      status: 'computed',
      unit: '%',
      tolerance: { rel: 1e-6 },
      rows: [
        ['ind.A.madison.10min', 98.86067, () => 100 * madisonCurve(600)],
        ['ind.A.madison.1day', 82.26981, () => 100 * madisonCurve(86_400)],
        ['ind.A.madison.10y', 62.01906, () => 100 * madisonCurve(10 * YEAR)],
        ['ind.A.madison.50y', 58.87314, () => 100 * madisonCurve(50 * YEAR)],
      ],
    },
    {
      source: 'P L³/3EI + P L/(κ A G), cantilever of 400 mm, 50 x 80 mm, E 11,000 and G 700 MPa, 500 N',
      status: 'computed',
      unit: 'mm',
      tolerance: { rel: 1e-7 },
      rows: [
        [
          'ind.A.timoshenko',
          0.5402597,
          () => (500 * 400 ** 3) / (3 * 11_000 * ((50 * 80 ** 3) / 12)) + shearDeflection(500, 400, 50 * 80, 700),
        ],
      ],
    },
  ]);
});
