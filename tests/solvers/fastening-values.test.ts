import { describe } from 'vitest';
import { farUplift, liftScrews } from '../../lib/derive/checks/solvers/lift-off.ts';
import { weightOf } from '../../lib/derive/checks/solvers/mass.ts';
import { screwTravel, slotFor, USUAL_MOISTURE } from '../../lib/derive/checks/solvers/slot.ts';
import { threadRoom } from '../../lib/derive/checks/solvers/thread-room.ts';
import { ALLOWABLE_WITHDRAWAL_FACTOR, screwHold } from '../../lib/derive/checks/solvers/withdrawal.ts';
import { heightAt, type Surface } from '../../lib/geometry/surface.ts';
import { testValues } from './check-values.ts';

// Screws 330.2 mm (13 in) from the center line of a flat-sawn cherry top, 57.15 mm thick there and 28.575 at 508 mm.
const travel = screwTravel({ distance: 330.2, perPercent: 0.00248, moisture: USUAL_MOISTURE.value });
const slope = (57.15 - 28.575) / 508;
const depth: Surface = {
  take: 'lowest',
  planes: [
    { name: 'left', a: 0, b: -slope, c: 57.15 },
    { name: 'right', a: 0, b: slope, c: 57.15 },
  ],
};
const thickness = heightAt(depth, 0, 330.2);
const cherry10 = { specificGravity12: 0.5, shank: 4.83, thread: 25 };
const walnut12 = { specificGravity12: 0.55, shank: 5.49, thread: 25 };
const redOak = screwTravel({ distance: 300, perPercent: 0.00369, moisture: { fitting: 8, low: 4, high: 12 } });

// G 0.45, D 0.190 in: N and mm to pounds an inch.
const perMm = screwHold({ specificGravity12: 0.45, shank: 0.19 * 25.4, thread: 1 }).allowable;
const poundsAnInch = (perMm * 25.4) / 4.4482216;

describe('fastening the top', () => {
  testValues([
    {
      source: 'closed form',
      status: 'computed',
      unit: 'mm',
      tolerance: { rel: 1e-6 },
      rows: [
        ['demo.E.slot.out', 2.866136, () => travel.outward],
        ['demo.E.slot.in', 2.04724, () => travel.inward],
      ],
    },
    {
      source: 'shank + outward + inward + 1/16 in',
      status: 'computed',
      unit: 'mm',
      tolerance: { rel: 1e-6 },
      rows: [['demo.E.slot.length', 11.32688, () => slotFor(4.826, travel).length]],
    },
    {
      source: '(out - in)/2, screw toward the fixed point',
      status: 'computed',
      unit: 'mm',
      tolerance: { rel: 1e-6 },
      rows: [['demo.E.slot.offset', 0.409448, () => slotFor(4.826, travel).offset]],
    },
    {
      source: 'linear taper',
      status: 'computed',
      unit: 'mm',
      tolerance: { rel: 1e-7 },
      rows: [['demo.E.thicknessAtScrew', 38.57625, () => thickness]],
    },
    {
      source: 'h - 9.525 mm cover, bracket not yet taken off',
      status: 'computed',
      unit: 'mm',
      tolerance: { rel: 1e-7 },
      rows: [['demo.E.threadMax', 29.05125, () => threadRoom({ thickness, bracket: 0, shank: 4.83 }).thread]],
    },
    {
      source: '19.65 G^2 D L',
      status: 'computed',
      unit: 'N',
      tolerance: { rel: 1e-6 },
      rows: [
        ['demo.E.screwAllowable', 593.1844, () => screwHold(cherry10).allowable],
        ['ind.E.walnutNo12.allowable', 815.8312, () => screwHold(walnut12).allowable],
      ],
    },
    {
      source: '108.25 G^2 D L',
      status: 'computed',
      unit: 'N',
      tolerance: { rel: 1e-6 },
      rows: [
        ['demo.E.screwUltimate', 3267.797, () => screwHold(cherry10).ultimate],
        ['ind.E.walnutNo12.ultimate', 4494.337, () => screwHold(walnut12).ultimate],
      ],
    },
    {
      source: '2.0 x base weight',
      status: 'computed',
      unit: 'N',
      tolerance: { rel: 1e-5 },
      rows: [
        [
          'demo.E.liftByTop',
          405.5622,
          () => liftScrews({ baseWeight: weightOf(20.67086), allowable: 593, frames: 2 }).load,
        ],
      ],
    },
    {
      source: 'P a/S - half the top weight',
      status: 'computed',
      unit: 'N',
      tolerance: { abs: 0.01 },
      rows: [['demo.E.farBearerUplift1079N', 14.532, () => farUplift(1079, 355.6, 1422.4, weightOf(52.03221) / 2)]],
    },
    {
      source: 'published example of 2850 G^2 D in pounds and inches; the formula gives 109.65',
      status: 'read',
      unit: 'lbf per inch',
      tolerance: { abs: 1 },
      rows: [['ind.E.ndsExample', 109, () => poundsAnInch]],
    },
    {
      source: 'C_T of FPL-GTR-282 table 13-5, quoted; 4 % either way, 1 mm of play',
      status: 'computed',
      unit: 'mm',
      tolerance: { rel: 1e-6 },
      rows: [['ind.E.slotRedOak', 15.356, () => slotFor(5.5, redOak, 1).length]],
    },
  ]);
});

describe('units of the withdrawal formula', () => {
  testValues([
    {
      source: '2850 lbf per in and in',
      status: 'computed',
      unit: 'N and mm',
      tolerance: { rel: 1e-3 },
      rows: [['allowable withdrawal factor', (2850 * 4.4482216) / 25.4 ** 2, () => ALLOWABLE_WITHDRAWAL_FACTOR.value]],
    },
  ]);
});
