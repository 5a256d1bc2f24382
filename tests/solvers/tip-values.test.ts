import { describe } from 'vitest';
import { GRAVITY, weightOf } from '../../lib/derive/checks/solvers/mass.ts';
import { FLOOR_FRICTION, slidePush } from '../../lib/derive/checks/solvers/slide.ts';
import { type DownLoad, type Standing, tipLoad, tipMargin, tipPush } from '../../lib/derive/checks/solvers/tip.ts';
import type { Vec2 } from '../../lib/geometry/vec.ts';
import { testValues } from './check-values.ts';

// Table of 713.217 N, top 2133.6 x 1016 mm: pads on the frame center lines, 25.4 mm in from the ends of feet of 762 mm.
const rectangle = (x: readonly [number, number], y: number): Vec2[] =>
  x.flatMap((p): Vec2[] => [
    [p, -y],
    [p, y],
  ]);
const standing = (inset: number, y: number): Standing => ({
  contacts: rectangle([inset, 2133.6 - inset], y),
  center: [1066.8, 0],
  weight: 713.217,
});
const table = standing(355.6, 355.6);
const framesOut = standing(304.8, 355.6);
// Feet so wide that a push can only tip it over an end.
const lengthwise = standing(355.6, 2000);
const END: Vec2 = [0, 0];
const SIDE: Vec2 = [1066.8, 508];
const square: Standing = { contacts: rectangle([-11.125, 11.125], 11.125), center: [0, 0], weight: 1 };
const levers: Standing = { contacts: rectangle([-19, 19], 40), center: [0, 0], weight: 500 };

// Bench of 25 kg, 1500 mm long, feet 300 mm from its ends; persons of 110 kg (1079 N) on its middle line.
const bench: Standing = { contacts: rectangle([300, 1200], 150), center: [750, 0], weight: weightOf(25) };
const person = (x: number): DownLoad => ({ force: 1079, at: [x, 0] });

describe('tipping', () => {
  testValues([
    {
      source: 'closed form',
      status: 'computed',
      unit: 'N',
      tolerance: { rel: 1e-5 },
      rows: [
        ['demo.F.end.FtipAtEdge', 1426.434, () => tipLoad(table, END).force],
        ['demo.F.end.Ftip50mmIn', 1659.817, () => tipLoad(table, [50, 0]).force],
        ['demo.F.end.Htip', 676.9518, () => tipPush(lengthwise, 749.3).force],
        ['demo.F.side.FtipAtEdge', 1664.173, () => tipLoad(table, SIDE).force],
        ['demo.F.side.Htip', 338.4759, () => tipPush(table, 749.3).force],
        ['demo.F.slideMu0.4', 285.2868, () => slidePush(table.weight, FLOOR_FRICTION.value.usual)],
      ],
    },
    {
      source: 'closed form',
      status: 'computed',
      unit: 'kg',
      tolerance: { rel: 1e-5 },
      rows: [
        ['demo.F.end.FtipAtEdge_kg', 145.4061, () => tipLoad(table, END).force / GRAVITY],
        ['demo.F.end.framesAt12in_kg', 181.7577, () => tipLoad(framesOut, END).force / GRAVITY],
      ],
    },
    {
      source: 'closed form',
      status: 'computed',
      unit: '-',
      tolerance: { rel: 1e-5 },
      rows: [
        ['demo.F.end.margin600N50mmIn', 2.766361, () => tipMargin(table, [{ force: 600, at: [50, 0] }]).margin],
        ['demo.F.end.margin1079NAtEdge', 1.321996, () => tipMargin(table, [{ force: 1079, at: END }]).margin],
        ['demo.F.side.margin600N50mmIn', 4.127929, () => tipMargin(table, [{ force: 600, at: [1066.8, 458] }]).margin],
        ['demo.F.side.margin1079NAtEdge', 1.542329, () => tipMargin(table, [{ force: 1079, at: SIDE }]).margin],
        ['demo.F.side.marginLevel300N', 1.128253, () => tipMargin(table, [], { force: 300, height: 749.3 }).margin],
      ],
    },
    {
      source: '54 in round top on a square base of 22.25 in',
      status: 'computed',
      unit: 'F_tip/W',
      tolerance: { rel: 1e-6 },
      rows: [['ind.F.roundTable', 0.7007874, () => tipLoad(square, [27, 0]).force]],
    },
    {
      source: '500 lb, both levers 19 in',
      status: 'read',
      unit: 'lbf',
      tolerance: { rel: 1e-9 },
      rows: [['ind.F.equalLevers', 500, () => tipLoad(levers, [38, 0]).force]],
    },
    {
      source: '110 kg at 100 mm from the end: tips',
      status: 'computed',
      unit: '-',
      tolerance: { rel: 1e-6 },
      rows: [['ind.F.bench.end100mm', 0.511411, () => tipMargin(bench, [person(100)]).margin]],
    },
    {
      source: '110 kg at 250 mm and at 750 mm from the same end',
      status: 'computed',
      unit: '-',
      tolerance: { rel: 1e-6 },
      rows: [['ind.F.bench.twoPeople', 11.04564, () => tipMargin(bench, [person(250), person(750)]).margin]],
    },
  ]);
});
