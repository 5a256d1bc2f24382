import { describe } from 'vitest';
import { oneSidedCup, staveCup, staveCupSmall } from '../../lib/derive/checks/solvers/cup-depth.ts';
import { restraintStress } from '../../lib/derive/checks/solvers/restraint.ts';
import { wedgeAngleChange, wedgeAngleChangeSmall } from '../../lib/derive/checks/solvers/wedge-angle.ts';
import { shoulderGap, widthChange } from '../../lib/derive/checks/solvers/width-change.ts';
import { degrees } from '../../lib/units/mm.ts';
import { testValues } from './check-values.ts';

// Black cherry: C_T 0.00248, C_R 0.00126, S_T 7.1 %. Top 1016 mm wide, 57.15 mm thick in the middle, 28.575 at the edges.
const CT = 0.00248;
const CR = 0.00126;
const top = { width: 1016, perPercent: CT, shrinkage: 7.1, from: 5, to: 11 };
const angle = degrees(Math.atan((57.15 - 28.575) / 508));
const wedge = { angle, thick: CR, wide: CT, moistureChange: 4 };
const stave = { width: 127, ringRadius: 150, tangential: CT, radial: CR, moistureChange: -6 };
const redOak = (ringRadius: number) => ({
  width: 150,
  ringRadius,
  tangential: 0.00369,
  radial: 0.00158,
  moistureChange: -6,
});

describe('movement', () => {
  testValues([
    {
      source: 'W C dMC',
      status: 'computed',
      unit: 'mm',
      tolerance: { rel: 1e-6 },
      rows: [['demo.G.width5to11', 15.11808, () => widthChange(top).byCoefficient]],
    },
    {
      source: 'Wood Handbook Eq 13-3',
      status: 'computed',
      unit: 'mm',
      tolerance: { rel: 1e-6 },
      rows: [['demo.G.width5to11eq13_3', 15.33449, () => widthChange(top).byShrinkage!]],
    },
    {
      source: 'atan',
      status: 'computed',
      unit: 'deg',
      tolerance: { rel: 1e-6 },
      rows: [['demo.G.wedgeAngle', 3.219495, () => angle]],
    },
    {
      source: 'closed form',
      status: 'computed',
      unit: 'deg',
      tolerance: { rel: 1e-5 },
      rows: [
        ['demo.G.wedgeChangeExact', -0.01552432, () => wedgeAngleChange(wedge)],
        ['demo.G.wedgeChangeSmall', -0.01567809, () => wedgeAngleChangeSmall(wedge)],
      ],
    },
    {
      source: 'closed form',
      status: 'computed',
      unit: 'mm',
      tolerance: { rel: 1e-6 },
      rows: [
        ['demo.G.staveCup.closed', 0.1967738, () => staveCupSmall(stave)],
        ['ind.G.cupRedOak.R100.closed', 0.712125, () => staveCupSmall(redOak(100))],
        ['ind.G.cupRedOak.R300.closed', 0.237375, () => staveCupSmall(redOak(300))],
      ],
    },
    {
      source: 'exact polar map, k = (1+eT)/(1+eR)',
      status: 'computed',
      unit: 'mm',
      tolerance: { rel: 1e-6 },
      rows: [['demo.G.staveCup.exact', 0.1854913, () => staveCup(stave)]],
    },
    {
      source: 'C dMC W^2/(8 t), t = mean thickness 42.8625 mm',
      status: 'computed',
      unit: 'mm',
      tolerance: { rel: 1e-6 },
      rows: [
        [
          'demo.G.oneSided1pct',
          7.465719,
          () => oneSidedCup({ width: 1016, thickness: 42.8625, perPercent: CT, moistureDifference: 1 }),
        ],
      ],
    },
    {
      source: 'E_T C dMC',
      status: 'computed',
      unit: 'MPa',
      tolerance: { rel: 1e-6 },
      rows: [['demo.G.restraint4pct', 8.787136, () => restraintStress(0.086 * 10_300, CT, 4)]],
    },
    {
      source: 'C dMC x half of the 82.55 mm post',
      status: 'computed',
      unit: 'mm',
      tolerance: { rel: 1e-6 },
      rows: [['demo.G.shoulderGap4pct', 0.409448, () => shoulderGap(82.55, CT, 4)]],
    },
    {
      source: 'FPL-GTR-190 p. 13-17: 232 mm, 1.7 mm; C_T 0.00245 and 8 to 11 % from memory',
      status: 'read',
      unit: 'mm',
      tolerance: { abs: 0.05 },
      rows: [
        ['ind.G.whiteFir', 1.7, () => widthChange({ width: 232, perPercent: 0.00245, from: 8, to: 11 }).byCoefficient],
      ],
    },
    {
      source: 'exact polar map',
      status: 'computed',
      unit: 'mm',
      tolerance: { rel: 1e-6 },
      rows: [
        ['ind.G.cupRedOak.R100.exact', 0.6076472, () => staveCup(redOak(100))],
        ['ind.G.cupRedOak.R300.exact', 0.2311502, () => staveCup(redOak(300))],
      ],
    },
    {
      source: '0.056 x 11600 x 0.00274 x 4, ratio from memory',
      status: 'computed',
      unit: 'MPa',
      tolerance: { rel: 1e-6 },
      rows: [['ind.G.restraintWalnut', 7.119616, () => restraintStress(0.056 * 11_600, 0.00274, 4)]],
    },
    {
      source: '0.082 x 12500 x 0.00369 x 4, ratio from memory',
      status: 'computed',
      unit: 'MPa',
      tolerance: { rel: 1e-6 },
      rows: [['ind.G.restraintRedOak', 15.129, () => restraintStress(0.082 * 12_500, 0.00369, 4)]],
    },
  ]);
});
