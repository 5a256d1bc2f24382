import { describe } from 'vitest';
import type { TenonKind } from '../../lib/derive/checks/solvers/joint-factors.ts';
import { type Tenon, tenonStrength } from '../../lib/derive/checks/solvers/joint-strength.ts';
import { jointUse } from '../../lib/derive/checks/solvers/joint-use.ts';
import { twistShear } from '../../lib/derive/checks/solvers/twist.ts';
import { testValues } from './check-values.ts';

// Loose tenons of black cherry, f_v 11.7 and bending 85 MPa, 38.1 mm into each half. The oaks: Eckelman, Uysal and
// Haviarova, BioResources 11(3):7162 (2016), rail 22.2 x 63.5 mm, tenon 32 x 38 x 9.5 mm, PVA glue.
const cherry = { depths: [38.1, 38.1], thickness: 12.7, shear: 11.7, bending: 85 };
const stretcher: Tenon = { ...cherry, height: 69.85 };
const postBearer: Tenon = { ...cherry, height: 44.45 };
const LOOSE: TenonKind = { loose: true, ends: 'round', flatsGlued: true };
const tested = { depths: [32], height: 38, thickness: 9.5 };
const redOak: Tenon = { ...tested, shear: 12.3, bending: 99 };
const whiteOak: Tenon = { ...tested, shear: 13.8, bending: 105 };

describe('strength and use of joints', () => {
  testValues([
    {
      source: 'closed form',
      status: 'computed',
      unit: 'N m',
      tolerance: { rel: 1e-6 },
      rows: [
        ['demo.D.stretcher.glue', 825.8089, () => tenonStrength(stretcher).glue / 1000],
        ['demo.D.stretcher.tenon', 877.8175, () => tenonStrength(stretcher).tenon / 1000],
        ['demo.D.postBearer.glue', 386.6736, () => tenonStrength(postBearer).glue / 1000],
        ['demo.D.postBearer.tenon', 355.4798, () => tenonStrength(postBearer).tenon / 1000],
        ['ind.D.redOak.glue', 247.6795, () => tenonStrength(redOak).glue / 1000],
        ['ind.D.redOak.tenon', 226.347, () => tenonStrength(redOak).tenon / 1000],
        ['ind.D.whiteOak.glue', 277.8843, () => tenonStrength(whiteOak).glue / 1000],
        ['ind.D.whiteOak.tenon', 240.065, () => tenonStrength(whiteOak).tenon / 1000],
      ],
    },
    {
      source: '0.75 min(glue, tenon)',
      status: 'computed',
      unit: 'N m',
      tolerance: { rel: 1e-6 },
      rows: [
        ['demo.D.stretcher.loose', 619.3566, () => jointUse(stretcher, LOOSE, 0).capacity / 1000],
        ['demo.D.postBearer.loose', 266.6098, () => jointUse(postBearer, LOOSE, 0).capacity / 1000],
      ],
    },
    {
      source: 'M / loose capacity',
      status: 'computed',
      unit: '-',
      tolerance: { rel: 1e-6 },
      rows: [
        ['demo.D.stretcher.use', 0.1814706, () => jointUse(stretcher, LOOSE, 112_395).use],
        ['demo.D.postBearer.use', 0.2107855, () => jointUse(postBearer, LOOSE, 56_197.5).use],
      ],
    },
    {
      source: 'M x 400/300 / loose capacity',
      status: 'computed',
      unit: '-',
      tolerance: { rel: 1e-6 },
      rows: [
        ['demo.D.stretcher.use400N', 0.2419608, () => jointUse(stretcher, LOOSE, (112_395 * 400) / 300).use],
        ['demo.D.postBearer.use400N', 0.2810474, () => jointUse(postBearer, LOOSE, (56_197.5 * 400) / 300).use],
      ],
    },
    {
      source: 'torsion of a bare tenon under H h/4; shoulders ignored',
      status: 'computed',
      unit: 'MPa',
      tolerance: { rel: 0.01 },
      rows: [['demo.D.crossRail.tenonTwistShear', 16.896, () => twistShear(56_197.5, 12.7, 69.85)]],
    },
    {
      source: 'Eckelman, Uysal and Haviarova 2016, BioResources 11(3):7162',
      status: 'read',
      unit: 'N m',
      tolerance: { below: 0 },
      rows: [
        ['ind.D.redOak.measuredMean', 353, () => tenonStrength(redOak).strength / 1000],
        ['ind.D.whiteOak.measuredMean', 358, () => tenonStrength(whiteOak).strength / 1000],
      ],
    },
    {
      source: 'Eckelman, Uysal and Haviarova 2016, lower tolerance limit 95|95',
      status: 'read',
      unit: 'N m',
      tolerance: { below: 1 },
      rows: [
        ['ind.D.redOak.measuredTolerance9595', 266, () => tenonStrength(redOak).strength / 1000],
        ['ind.D.whiteOak.measuredTolerance9595', 240, () => tenonStrength(whiteOak).strength / 1000],
      ],
    },
    {
      source: 'Uysal 2024: beech means 154 and 204 N m, sizes not read',
      status: 'read',
      unit: '-',
      tolerance: { abs: 0.001 },
      rows: [['ind.D.dowelOverTenonBeech', 0.7549, () => 154 / 204]],
    },
  ]);
});
