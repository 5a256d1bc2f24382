import { describe } from 'vitest';
import { clampsByCover, clampsByForce, USUAL_PRESSURE } from '../../lib/derive/checks/solvers/clamps.ts';
import { jointContact, kernWindow } from '../../lib/derive/checks/solvers/kern-rule.ts';
import { testValues } from './check-values.ts';

// Eight staves of 127 mm: joints where the top is this deep. The clamps give 5 kN each.
const DEPTHS = [35.71875, 42.8625, 50.00625, 57.15];
const ridge = { pressure: USUAL_PRESSURE.value, length: 2133.6, depth: 57.15, clampForce: 5000 };

// In pounds and inches: a joint of 1 x 25 in at 150 psi; the formula holds in any consistent units.
const published = (clampForce: number) => ({ pressure: 150, length: 25, depth: 1, clampForce });

describe('glue-up', () => {
  testValues([
    {
      source: 'closed form',
      status: 'computed',
      unit: 'mm',
      tolerance: { rel: 1e-6 },
      rows: [
        ['demo.H.kern.lo', 19.05, () => kernWindow(DEPTHS).low],
        ['demo.H.kern.hi', 23.8125, () => kernWindow(DEPTHS).high],
        ['demo.H.midEdge.y', 14.2875, () => 28.575 / 2],
        ['demo.H.midEdge.contactDepth', 42.8625, () => jointContact(57.15, 14.2875).contact],
        ['demo.H.midEdge.openDepth', 14.2875, () => jointContact(57.15, 14.2875).open],
      ],
    },
    {
      source: 'closed form',
      status: 'computed',
      unit: '-',
      tolerance: { rel: 1e-6 },
      rows: [['demo.H.midEdge.peakOverMean', 2.666667, () => jointContact(57.15, 14.2875).peak]],
    },
    {
      source: 'p A',
      status: 'computed',
      unit: 'kN',
      tolerance: { rel: 1e-6 },
      rows: [['demo.H.ridgeForce', 146.3223, () => clampsByForce(ridge).force / 1000]],
    },
    {
      source: 'ceil',
      status: 'computed',
      unit: 'clamps',
      tolerance: { abs: 0 },
      rows: [['demo.H.clampsByForce', 30, () => clampsByForce(ridge).clamps]],
    },
    {
      source: 'ceil(L/spacing)+1, spacing 2 (127 + 50)',
      status: 'computed',
      unit: 'clamps',
      tolerance: { abs: 0 },
      rows: [['demo.H.clampsByCover', 8, () => clampsByCover({ length: 2133.6, stave: 127, caul: 50 }).clamps]],
    },
    {
      source: 'closed form',
      status: 'computed',
      unit: 'mm',
      tolerance: { abs: 1e-9 },
      rows: [
        ['ind.H.kern900.lo', 15, () => kernWindow([26.25, 32.5, 38.75, 45]).low],
        ['ind.H.kern900.hi', 17.5, () => kernWindow([26.25, 32.5, 38.75, 45]).high],
      ],
    },
    {
      source: 'WOOD magazine, September 2021: 1 x 25 in joint at 150 psi',
      status: 'read',
      unit: 'lbf',
      tolerance: { abs: 0 },
      rows: [['ind.H.publishedForce', 3750, () => clampsByForce(published(420)).force]],
    },
    {
      source: 'WOOD magazine, September 2021: 420 lb clamps',
      status: 'read',
      unit: 'clamps',
      tolerance: { abs: 0 },
      rows: [['ind.H.publishedCount420', 9, () => clampsByForce(published(420)).clamps]],
    },
    {
      source: 'WOOD magazine, September 2021: 470 lb clamps',
      status: 'read',
      unit: 'clamps',
      tolerance: { abs: 0 },
      rows: [['ind.H.publishedCount470', 8, () => clampsByForce(published(470)).clamps]],
    },
  ]);
});
