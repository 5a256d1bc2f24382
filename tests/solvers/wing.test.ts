import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { GAUSS_5, integrate } from '../../lib/derive/checks/solvers/gauss.ts';
import { type Wing, type WingLoad, wingMoment, wingThickness } from '../../lib/derive/checks/solvers/wing.ts';
import { tipDeflection } from '../../lib/derive/checks/solvers/wing-deflection.ts';
import { wingPeak } from '../../lib/derive/checks/solvers/wing-stress.ts';
import { wingWidths } from '../../lib/derive/checks/solvers/wing-width.ts';

const SEED = 1848;
const plain: Wing = { reach: 350, breadth: 300, tip: 20, root: 45, e: 650 };
const LOADS: WingLoad[] = [
  { kind: 'tip', force: 300 },
  { kind: 'even', perLength: 0.5 },
  { kind: 'own weight', perVolume: 5.886e-6 },
];
const roots = fc.double({ min: 5, max: 80, noNaN: true });

/** The moment from the pieces of load outside a place, by brute force. */
function momentByPieces(wing: Wing, load: WingLoad, x: number): number {
  if (load.kind === 'tip') return load.force * x;
  const at = (s: number): number =>
    load.kind === 'even' ? load.perLength : load.perVolume * wing.breadth * wingThickness(wing, s);
  return integrate((s) => at(s) * (x - s), 0, x, GAUSS_5);
}

describe('tipDeflection', () => {
  it('is the integral of M x / E I for thin and thick roots', () => {
    fc.assert(
      fc.property(roots, fc.constantFrom(...LOADS), (root, load) => {
        const wing = { ...plain, root };
        const curvature = (x: number) =>
          (12 * momentByPieces(wing, load, x)) / (wing.e * wing.breadth * wingThickness(wing, x) ** 3);
        const expected = integrate((x) => curvature(x) * x, 0, wing.reach, GAUSS_5, 64);
        expect(Math.abs(tipDeflection(wing, load) / expected - 1)).toBeLessThan(1e-8);
      }),
      { seed: SEED },
    );
  });

  it.each(LOADS)('does not jump where the way of calculating changes, $kind', (load) => {
    for (const root of [22, 18]) {
      const below = tipDeflection({ ...plain, root: root * (1 - 1e-9) }, load);
      const above = tipDeflection({ ...plain, root: root * (1 + 1e-9) }, load);
      expect(Math.abs(below / above - 1)).toBeLessThan(2e-8);
    }
  });

  it('is that of a beam where nothing tapers', () => {
    const even: Wing = { ...plain, root: 20 };
    const stiffness = (650 * 300 * 20 ** 3) / 12;
    expect(tipDeflection(even, LOADS[0]!)).toBeCloseTo((300 * 350 ** 3) / (3 * stiffness), 9);
    expect(tipDeflection(even, LOADS[1]!)).toBeCloseTo((0.5 * 350 ** 4) / (8 * stiffness), 9);
    expect(tipDeflection(even, LOADS[2]!)).toBeCloseTo((5.886e-6 * 300 * 20 * 350 ** 4) / (8 * stiffness), 9);
  });

  it('refuses what has no size', () => {
    expect(() => tipDeflection({ ...plain, tip: 0 }, LOADS[0]!)).toThrow('thickness at the tip is 0 mm');
    expect(() => tipDeflection({ ...plain, e: -1 }, LOADS[0]!)).toThrow('E across is -1 MPa');
  });
});

describe('wingPeak', () => {
  it('is nowhere lower than along the wing', () => {
    fc.assert(
      fc.property(roots, fc.constantFrom(...LOADS), (root, load) => {
        const wing = { ...plain, root };
        const stressAt = (x: number) => (6 * wingMoment(wing, load, x)) / (wing.breadth * wingThickness(wing, x) ** 2);
        const { at, stress } = wingPeak(wing, load);
        expect(stressAt(at)).toBeCloseTo(stress, 9);
        for (let x = 0; x <= 350; x += 2.5) expect(stressAt(x)).toBeLessThanOrEqual(stress * (1 + 1e-12));
      }),
      { seed: SEED },
    );
  });

  it('moves from the root steadily once the root is twice as thick', () => {
    expect(wingPeak({ ...plain, root: 40 }, LOADS[0]!).at).toBe(350);
    expect(wingPeak({ ...plain, root: 40.001 }, LOADS[0]!).at).toBeCloseTo(350, 1);
    expect(wingPeak({ ...plain, root: 60 }, LOADS[0]!).at).toBeCloseTo(175, 9);
  });
});

describe('wingWidths', () => {
  const edge = { reach: 127, tip: 30, root: 36, along: 10_000, across: 800 };

  it('gives nothing outside the range that it was fitted to', () => {
    expect(wingWidths(edge, 'corner')).toBeDefined();
    expect(wingWidths({ ...edge, root: 90 }, 'corner')).toBeDefined();
    expect(wingWidths({ ...edge, root: 91 }, 'corner')).toBeUndefined();
    expect(wingWidths({ ...edge, root: 30 }, 'corner')).toBeDefined();
    expect(wingWidths({ ...edge, root: 29 }, 'corner')).toBeUndefined();
    expect(wingWidths({ ...edge, across: 10_000 / 9 }, 'middle of an edge')).toBeDefined();
    expect(wingWidths({ ...edge, across: 2000 }, 'middle of an edge')).toBeUndefined();
    expect(wingWidths({ ...edge, across: 500 }, 'middle of an edge')).toBeUndefined();
  });

  it('has less help at a corner', () => {
    const [middle, corner] = [wingWidths(edge, 'middle of an edge')!, wingWidths(edge, 'corner')!];
    expect(corner.deflection).toBeLessThan(middle.deflection);
    expect(corner.stress).toBeCloseTo(1.05 * 127, 12);
    expect(corner.deflection / middle.deflection).toBeCloseTo(0.72 / 1.93, 12);
  });
});
