import { describe, expect, it } from 'vitest';
import { crossStressAt } from '../../lib/derive/checks/solvers/plate/cross-stress.ts';
import { curvatureAt } from '../../lib/derive/checks/solvers/plate/field.ts';
import { PLATE_WAYS, type PlateSupport, type PlateWood } from '../../lib/derive/checks/solvers/plate/plate.ts';
import { rigidityOf } from '../../lib/derive/checks/solvers/plate/rigidity.ts';
import { type FactoredPlate, factorPlate } from '../../lib/derive/checks/solvers/plate/solve.ts';
import { tipDeflection } from '../../lib/derive/checks/solvers/wing-deflection.ts';
import { type WingPlace, wingWidths } from '../../lib/derive/checks/solvers/wing-width.ts';
import type { Vec2 } from '../../lib/geometry/vec.ts';
import { testValues } from './check-values.ts';
import { evenly, give, isotropic, pushed } from './plate-demo.ts';

const clamped = (from: Vec2, to: Vec2): PlateSupport => ({ from, to, holds: PLATE_WAYS });
const alike = isotropic(10_000, 0.3);

/** Moment at the root over the force, for a long plate clamped along one edge and pushed on the free one. */
function rootMoment(): number {
  const plate = factorPlate({
    grid: { xs: evenly(800, 160), ys: evenly(100, 20) },
    wood: alike,
    thickness: () => 5,
    supports: [clamped([0, 0], [800, 0])],
  });
  const { along, across } = curvatureAt(pushed(plate, [400, 100]), [400, 0]);
  const d = rigidityOf(alike);
  return (5 ** 3 * (d.across * across + d.coupling * along)) / 1000;
}

/** A strip of 10 mm, 100 mm thick at its root and 50 at its tip, over the closed form of a wing. */
function narrow(turned: boolean): number {
  const at = (s: number, t: number): Vec2 => (turned ? [t, s] : [s, t]);
  const [long, short] = [evenly(1000, 40), evenly(10, 2)];
  const plate = factorPlate({
    grid: turned ? { xs: short, ys: long } : { xs: long, ys: short },
    wood: isotropic(10_000, 0),
    thickness: (x, y) => 100 - (turned ? y : x) / 20,
    supports: [clamped(at(0, 0), at(0, 10))],
  });
  const wing = { reach: 1000, breadth: 10, tip: 50, root: 100, e: 10_000 };
  return give(plate, at(1000, 5)) / tipDeflection(wing, { kind: 'tip', force: 1000 });
}

describe('clamped plates', () => {
  testValues([
    {
      source: 'classical infinite cantilever plate, load on the free edge; plate solve gives 0.5083 (160 x 20)',
      status: 'memory',
      unit: 'M/P',
      tolerance: { rel: 0.005 },
      rows: [['ind.B.isoCantilever.rootMoment', 0.509, rootMoment]],
    },
    {
      source: 'plate 10 x 1000 mm, thickness 100 to 50 mm, no cross strain, mesh 2 x 40',
      status: 'computed',
      unit: 'plate over closed form',
      tolerance: { rel: 1e-6 },
      rows: [
        ['ind.B.narrowTaper, across', 1, () => narrow(true)],
        ['ind.B.narrowTaper, along', 1, () => narrow(false)],
      ],
    },
  ]);
});

const REACH = 127;
const SPAN = 16 * REACH;

interface Edge {
  readonly tip: number;
  readonly root: number;
  readonly wood: PlateWood;
}

const wing = ({ tip, root, wood }: Edge): FactoredPlate =>
  factorPlate({
    grid: { xs: evenly(SPAN, 160), ys: evenly(REACH, 12) },
    wood,
    thickness: (_x, y) => tip + ((root - tip) * y) / REACH,
    supports: [clamped([0, REACH], [SPAN, REACH])],
  });

/** What the rule says over what the plate does. */
function ruleOverPlate({ tip, root, wood }: Edge, plate: FactoredPlate, place: WingPlace): [number, number] {
  const edge = { reach: REACH, tip, root, along: wood.along, across: wood.across, e: wood.across };
  const widths = wingWidths(edge, place)!;
  const x = place === 'corner' ? 0 : SPAN / 2;
  const stress = (6 * 1000 * REACH) / (widths.stress * root ** 2);
  return [
    tipDeflection({ ...edge, breadth: widths.deflection }, { kind: 'tip', force: 1000 }) / give(plate, [x, 0]),
    stress / crossStressAt(pushed(plate, [x, 0]), [x, REACH]),
  ];
}

describe('the rule for a wing, against plates clamped at the root', () => {
  const edges = [9, 11.63, 18].flatMap((ratio) =>
    [0.8, 1, 1.13].flatMap((shear) =>
      [30, 20, 10].map((tip) => ({
        tip,
        root: 30,
        wood: { along: 800 * ratio, across: 800, shear: 800 * shear, poisson: 0.428 },
      })),
    ),
  );

  it.each([
    ['middle of an edge', [0.93, 1.11], [0.96, 1.07]],
    ['corner', [0.88, 1.2], [0.88, 1.23]],
  ] as const)('%s', (place, deflection, stress) => {
    const all = edges.map((edge) => ruleOverPlate(edge, wing(edge), place));
    const ends = (k: 0 | 1): number[] => [Math.min(...all.map((r) => r[k])), Math.max(...all.map((r) => r[k]))];
    expect(ends(0)[0]).toBeGreaterThan(deflection[0]);
    expect(ends(0)[1]).toBeLessThan(deflection[1]);
    expect(ends(1)[0]).toBeGreaterThan(stress[0]);
    expect(ends(1)[1]).toBeLessThan(stress[1]);
  });
});
