import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Check } from '../../lib/derive/checks/check.ts';
import { edgeThickness } from '../../lib/derive/checks/edge-thickness.ts';
import { fitTogether } from '../../lib/derive/checks/fit-together.ts';
import { screwCover } from '../../lib/derive/checks/screw-cover.ts';
import { slotCover } from '../../lib/derive/checks/slot-cover.ts';
import type { Finding } from '../../lib/model/finding.ts';
import type { UnitSystem } from '../../lib/units/format-length.ts';
import { inchesInText } from '../lists/marks-in-text.ts';
import type { Changes } from '../written.ts';
import { contextOf, handContext } from './contexts.ts';
import { boards, flat } from './trial-pieces.ts';

/** The lengths of a sentence in their order, mm: "1 1/32 in", "26.1 mm". */
const lengthsIn = (text: string): number[] =>
  [...text.matchAll(/((?:\d+ )?\d+\/\d+|\d+) in\b|([\d.]+) mm/g)].map(([, inches, mm]) =>
    inches === undefined ? Number(mm) : inchesInText(inches) * 25.4,
  );

const UNITS: readonly UnitSystem[] = ['in', 'mm'];
const STEP = { in: 25.4 / 32, mm: 0.1 } as const;
const DUST = 1e-4;

/** A figure that must not flatter: no more than the value, and no less than it by more than a step. */
function expectDown(said: number | undefined, value: number, units: UnitSystem, what: string): void {
  expect(said, what).toBeLessThanOrEqual(value + DUST);
  expect(said, what).toBeGreaterThan(value - STEP[units] - DUST);
}

/** The other way round: a need, a fault, a limit to be kept. */
function expectUp(said: number | undefined, value: number, units: UnitSystem, what: string): void {
  expect(said, what).toBeGreaterThanOrEqual(value - DUST);
  expect(said, what).toBeLessThan(value + STEP[units] + DUST);
}

const lengths = (from: number, to: number) => fc.double({ min: from, max: to, noNaN: true });
const RUNS = { seed: 20261125, numRuns: 25 };
const mm = (value: number): string => `${value.toFixed(4)} mm`;

/** What a check says of the reading table with some parameters changed, in both systems of units. */
const inBoth = (check: Check, changes: Changes): { readonly units: UnitSystem; readonly finding: Finding }[] => {
  const context = contextOf('reading-table', changes);
  return UNITS.flatMap((units) => check.run({ ...context, units }).map((finding) => ({ units, finding })));
};

describe('what findings say is never better than what they found', () => {
  it('cover goes down, the wanted cover and what is missing go up', () => {
    fc.assert(
      fc.property(lengths(12, 30), (gauge) => {
        const changes = { 'edgeJoint.gauge': mm(gauge) };
        for (const { units, finding } of inBoth(slotCover, changes)) {
          const { because, value, limit } = finding;
          const [said, wanted] = lengthsIn(because);
          if (value! < 0) expectUp(said, -value!, units, because);
          else expectDown(said, value!, units, because);
          expectUp(wanted, limit!, units, because);
        }
      }),
      RUNS,
    );
  });

  it('the wood ahead of a screw and its thread go down, what is wanted goes up', () => {
    fc.assert(
      fc.property(lengths(10, 45), (reach) => {
        const changes = { 'fixing.penetration': mm(reach), 'fixing.screwLength': '3 in' };
        for (const { units, finding } of inBoth(screwCover, changes)) {
          const { because, value, limit } = finding;
          const said = lengthsIn(because);
          if (because.includes('comes through')) expectUp(said.at(-2), -value!, units, because);
          else expectDown(said[0], value!, units, because);
          expectUp(said.at(-1), limit!, units, because);
        }
      }),
      RUNS,
    );
  });

  it('an edge goes down', () => {
    fc.assert(
      fc.property(lengths(13, 30), (thickness) => {
        const changes = { 'top.edgeThickness': mm(thickness), 'bearer.depth': '4 1/2 in' };
        for (const { units, finding } of inBoth(edgeThickness, changes)) {
          expectDown(lengthsIn(finding.because)[0], finding.value!, units, finding.because);
        }
      }),
      RUNS,
    );
  });

  it('a clash goes up', () => {
    fc.assert(
      fc.property(lengths(0.02, 20), (depth) => {
        const piece = boards({ id: 'lower', at: flat(0, 0, 0) }, { id: 'upper', at: flat(0, 0, 30 - depth) });
        for (const units of UNITS) {
          const [finding] = fitTogether.run(handContext(piece, units)) as [Finding];
          expectUp(lengthsIn(finding.because)[0], depth, units, finding.because);
        }
      }),
      RUNS,
    );
  });

  it('by a reader of lengths that reads them', () => {
    const read = lengthsIn('by 1 1/32 in; 3/8 in is wanted, or 6.4 mm, not 12 in');
    expect(read.map((value) => value.toFixed(5))).toEqual(['26.19375', '9.52500', '6.40000', '304.80000']);
  });
});
