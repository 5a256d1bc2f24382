import { describe, expect, it } from 'vitest';
import { crossStressAt, meanCrossStress } from '../../lib/derive/checks/solvers/plate/cross-stress.ts';
import type { FactoredPlate } from '../../lib/derive/checks/solvers/plate/solve.ts';
import { workingStress } from '../../lib/derive/checks/solvers/working-stress.ts';
import { type CheckValues, testValues } from './check-values.ts';
import { demoPlate, give, lazily, type Mesh, PLACES, pushed, QUARTER_SAWN, under } from './plate-demo.ts';

// All figures rest on elastic ratios of cherry that are from memory: they test the code, not the wood.

type Place = keyof typeof PLACES;
type Lazy = () => FactoredPlate;

const plain = lazily(() => demoPlate([42, 16]));
const stress = lazily(() => demoPlate([84, 32]));
const fine = lazily(() => demoPlate([168, 80]));
const WEIGHT = { kind: 'own weight', density: 560 } as const;
const SPREAD = { kind: 'spread', pressure: 4.525455e-4 } as const;
const EVEN = { kind: 'spread', pressure: 5e-4 } as const;

const group = (source: string, rel: number, rows: CheckValues['rows'], unit = 'mm'): CheckValues => ({
  source,
  status: 'computed',
  unit,
  tolerance: { rel },
  rows,
});

const gives = (name: string, plate: Lazy, place: Place, expected: number): CheckValues['rows'][number] => [
  `${name}.${place}`,
  expected,
  () => give(plate(), PLACES[place]),
];

const SOURCE = 'orthotropic plate solve, 12-way rectangle';

/** Mean over 8 in, centered on the bearer, and the value right at its end, with 1 kN on the edge over it. */
const mean = (plate: Lazy) => () => meanCrossStress(pushed(plate(), PLACES.edgeOverBearer), [355.6, 127], 203.2);
const atEnd = (plate: Lazy) => () => crossStressAt(pushed(plate(), PLACES.edgeOverBearer), [355.6, 127]);

const stressRows = ([along, across]: Mesh, plate: Lazy, meanValue: number, atEndValue: number): CheckValues[] => [
  group(
    `${SOURCE} ${along} x ${across}, trapezoidal mean over 203.2 mm`,
    0.03,
    [[`demo.B.crossGrainStress.edgeOverBearer.${along}x${across}`, meanValue, mean(plate)]],
    'MPa',
  ),
  group(
    `${SOURCE} ${along} x ${across}, singular: shows that it does not settle`,
    0.05,
    [[`demo.B.crossGrainStress.pointValue.${along}x${across}`, atEndValue, atEnd(plate)]],
    'MPa',
  ),
];

function variant(name: string, plate: Lazy, [edge, corner, over, sigT]: readonly number[]): CheckValues {
  return group(`${SOURCE} 84 x 32`, 0.03, [
    [`demo.B.variant.${name}.edge`, edge!, () => give(plate(), PLACES.midLongEdge)],
    [`demo.B.variant.${name}.corner`, corner!, () => give(plate(), PLACES.corner)],
    [`demo.B.variant.${name}.over`, over!, () => give(plate(), PLACES.edgeOverBearer)],
    [`demo.B.variant.${name}.sigT`, sigT!, mean(plate)],
  ]);
}

describe('the top as a plate', () => {
  testValues([
    group(`${SOURCE} 42 x 16`, 0.01, [
      gives('demo.B.plate', plain, 'center', 0.83108),
      gives('demo.B.plate', plain, 'midLongEdge', 3.87589),
      gives('demo.B.plate', plain, 'corner', 5.55871),
      gives('demo.B.plate', plain, 'midShortEnd', 1.13455),
    ]),
    group(`${SOURCE} 42 x 16`, 0.03, [gives('demo.B.plate', plain, 'edgeOverBearer', 0.860426)]),
    group(`${SOURCE} 168 x 80, against 84 x 32`, 0.02, [
      gives('demo.B.plateFine', stress, 'center', 0.829451),
      gives('demo.B.plateFine', stress, 'midLongEdge', 3.89868),
      gives('demo.B.plateFine', stress, 'corner', 5.55537),
      gives('demo.B.plateFine', stress, 'midShortEnd', 1.13191),
    ]),
    group(`${SOURCE} 168 x 80, against 84 x 32`, 0.05, [gives('demo.B.plateFine', stress, 'edgeOverBearer', 0.809016)]),
    group('grillage of beams 42 x 24, twist constant b h³/6 each way', 0.06, [
      gives('demo.B.grillage', plain, 'center', 0.867917),
      gives('demo.B.grillage', plain, 'midLongEdge', 3.70502),
      gives('demo.B.grillage', plain, 'corner', 5.78061),
      gives('demo.B.grillage', plain, 'edgeOverBearer', 0.849718),
      gives('demo.B.grillage', plain, 'midShortEnd', 1.14617),
    ]),
    group(`${SOURCE} 42 x 16`, 0.02, [
      ['demo.B.plate.uniform500.centre', 0.230302, () => under(plain(), EVEN, PLACES.center)],
      ['demo.B.plate.uniform500.midLongEdge', 0.34078, () => under(plain(), EVEN, PLACES.midLongEdge)],
      ['demo.B.plate.uniform500.corner', -0.153656, () => under(plain(), EVEN, PLACES.corner)],
      ['demo.B.plate.selfWeight.centre', 0.110294, () => under(plain(), WEIGHT, PLACES.center)],
      ['demo.B.plate.selfWeight.midLongEdge', 0.147907, () => under(plain(), WEIGHT, PLACES.midLongEdge)],
      ['demo.B.plate.selfWeight.corner', -0.0739064, () => under(plain(), WEIGHT, PLACES.corner)],
      ['demo.B.plate.selfWeight.midShortEnd', -0.0774296, () => under(plain(), WEIGHT, PLACES.midShortEnd)],
      ['demo.B.plate.spread100kg.centre', 0.208444, () => under(plain(), SPREAD, PLACES.center)],
      ['demo.B.plate.spread100kg.midLongEdge', 0.308437, () => under(plain(), SPREAD, PLACES.midLongEdge)],
      ['demo.B.plate.spread100kg.corner', -0.139073, () => under(plain(), SPREAD, PLACES.corner)],
      ['demo.B.plate.spread100kg.midShortEnd', -0.150325, () => under(plain(), SPREAD, PLACES.midShortEnd)],
    ]),
    ...stressRows([42, 16], plain, 1.445, 1.9493),
    ...stressRows([84, 32], stress, 1.5837, 2.7813),
    ...stressRows(
      [126, 64],
      lazily(() => demoPlate([126, 64])),
      1.6429,
      3.9215,
    ),
    ...stressRows([168, 80], fine, 1.654, 4.3858),
    variant(
      'edge31.75',
      lazily(() => demoPlate([84, 32], 31.75)),
      [3.3124, 4.6343, 0.66353, 1.3924],
    ),
    variant(
      'edge34.925',
      lazily(() => demoPlate([84, 32], 34.925)),
      [2.843, 3.9094, 0.53949, 1.234],
    ),
    variant(
      'quarterSawn',
      lazily(() => demoPlate([84, 32], 28.575, QUARTER_SAWN)),
      [2.9389, 3.9469, 0.43274, 1.7509],
    ),
    {
      source: '3.9 MPa read in a public copy of FPL-GTR-282 table 5-3, COV 25 % from memory, DOL 1',
      status: 'ours',
      unit: 'MPa',
      tolerance: { rel: 1e-6 },
      rows: [['demo.B.crossGrainStress.limitShort', 1.76625, () => workingStress(3.9, 'tension across', 'short')]],
    },
  ]);

  it('is the same on 168 x 80 to every digit that was written down', () => {
    const expected = {
      center: 0.829451,
      midLongEdge: 3.89868,
      corner: 5.55537,
      edgeOverBearer: 0.809016,
      midShortEnd: 1.13191,
    };
    for (const [place, value] of Object.entries(expected)) {
      expect(Math.abs(give(fine(), PLACES[place as Place]) / value - 1)).toBeLessThan(2e-6);
    }
  });

  // E of beech along 12,205, radial 1858, tangential 774 MPa (J. Wood Sci. 2019, doi 10.1186/s10086-019-1794-4, table 1).
  it('rests on ratios like those read for another wood', () => {
    expect(774 / 12_205).toBeCloseTo(0.063, 3);
    expect(1858 / 12_205).toBeCloseTo(0.152, 3);
  });
});
