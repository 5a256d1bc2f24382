import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Beam, BeamLoad } from '../../lib/derive/checks/solvers/beam.ts';
import { bendBeam } from '../../lib/derive/checks/solvers/beam-bend.ts';
import { beamCases } from '../../lib/derive/checks/solvers/beam-cases.ts';
import { peakMoments } from '../../lib/derive/checks/solvers/beam-peaks.ts';
import { shearDeflection } from '../../lib/derive/checks/solvers/beam-shear.ts';

const SEED = 1848;
const EI = 7e10;
const beamOf = (span: number, left: number, right = left): Beam => ({
  length: left + span + right,
  supports: [left, left + span],
  e: 10_000,
  inertia: EI / 10_000,
});

const sizes = fc.record({
  span: fc.double({ min: 200, max: 3000, noNaN: true }),
  a: fc.double({ min: 1, max: 800, noNaN: true }),
  load: fc.double({ min: 0.01, max: 2000, noNaN: true }),
});

const near = (got: number, expected: number, scale: number): void =>
  expect(Math.abs(got - expected)).toBeLessThanOrEqual(1e-10 * Math.abs(scale));

describe('bendBeam', () => {
  it('is the closed form under an even load', () => {
    fc.assert(
      fc.property(sizes, ({ span: s, a, load: w }) => {
        const beam = beamOf(s, a);
        const bent = bendBeam(beam, [{ kind: 'even', perLength: w }]);
        const scale = (w * (s + a) ** 4) / EI;
        near(bent.deflectionAt(a + s / 2), (w * s * s * (5 * s * s - 24 * a * a)) / (384 * EI), scale);
        near(bent.deflectionAt(0), (w * a * (3 * a ** 3 + 6 * a * a * s - s ** 3)) / (24 * EI), scale);
        near(bent.momentAt(a), (-w * a * a) / 2, w * (s + a) ** 2);
        near(bent.momentAt(a + s / 2), (w * s * s) / 8 - (w * a * a) / 2, w * (s + a) ** 2);
      }),
      { seed: SEED },
    );
  });

  it('is the closed form under a load in the middle and at a tip', () => {
    fc.assert(
      fc.property(sizes, ({ span: s, a, load: p }) => {
        const beam = beamOf(s, a);
        const middle = bendBeam(beam, [{ kind: 'point', at: a + s / 2, force: p }]);
        const tip = bendBeam(beam, [{ kind: 'point', at: 0, force: p }]);
        const scale = (p * (s + a) ** 3) / EI;
        near(middle.deflectionAt(a + s / 2), (p * s ** 3) / (48 * EI), scale);
        near(middle.deflectionAt(beam.length), (-p * s * s * a) / (16 * EI), scale);
        near(tip.deflectionAt(a + s / 2), (-p * a * s * s) / (16 * EI), scale);
        near(tip.deflectionAt(0), (p * a * a * (s + a)) / (3 * EI), scale);
        near(tip.momentAt(a), -p * a, p * a);
        near(tip.reactions[1], (-p * a) / s, p * (1 + a / s));
        near(tip.reactions[0], p * (1 + a / s), p * (1 + a / s));
      }),
      { seed: SEED },
    );
  });

  it('rests on its supports, balances its loads and has no moment at its ends', () => {
    const place = fc.double({ min: 0, max: 1, noNaN: true });
    const loads = fc.array(fc.record({ at: place, to: place, load: fc.double({ min: -500, max: 500, noNaN: true }) }), {
      minLength: 1,
      maxLength: 6,
    });
    fc.assert(
      fc.property(loads, (given) => {
        const beam = beamOf(1500, 300, 500);
        const at = (share: number): number => share * beam.length;
        const acting = given.flatMap(({ at: x, to, load }): BeamLoad[] => [
          { kind: 'point', at: at(x), force: load },
          { kind: 'even', from: at(Math.min(x, to)), to: at(Math.max(x, to)), perLength: load / 100 },
        ]);
        const bent = bendBeam(beam, acting);
        const total = given.reduce((s, { at: x, to, load }) => s + load + (at(Math.abs(to - x)) * load) / 100, 0);
        expect(bent.reactions[0] + bent.reactions[1]).toBeCloseTo(total, 7);
        for (const support of beam.supports) expect(bent.deflectionAt(support)).toBeCloseTo(0, 10);
        expect(bent.momentAt(0)).toBeCloseTo(0, 6);
        expect(bent.momentAt(beam.length)).toBeCloseTo(0, 5);
      }),
      { seed: SEED },
    );
  });

  it('answers alike from both ends, and at two places each for the other', () => {
    const place = fc.double({ min: 0, max: 2300, noNaN: true });
    fc.assert(
      fc.property(place, place, (x, y) => {
        const beam = beamOf(1500, 300, 500);
        const mirrored = beamOf(1500, 500, 300);
        const underX = bendBeam(beam, [{ kind: 'point', at: x, force: 1000 }]);
        const underY = bendBeam(beam, [{ kind: 'point', at: y, force: 1000 }]);
        const back = bendBeam(mirrored, [{ kind: 'point', at: 2300 - x, force: 1000 }]);
        expect(underX.deflectionAt(y)).toBeCloseTo(underY.deflectionAt(x), 9);
        expect(underX.deflectionAt(y)).toBeCloseTo(back.deflectionAt(2300 - y), 9);
      }),
      { seed: SEED },
    );
  });

  it('refuses supports and loads beside the beam', () => {
    expect(() => bendBeam({ ...beamOf(1000, 100), supports: [100, 1300] }, [])).toThrow('second support is 1300 mm');
    expect(() => bendBeam({ ...beamOf(1000, 100), supports: [600, 600] }, [])).toThrow('span is 0 mm');
    expect(() => bendBeam(beamOf(1000, 100), [{ kind: 'point', at: 1201, force: 1 }])).toThrow('load is 1201 mm');
    expect(() => bendBeam(beamOf(1000, 100), [{ kind: 'even', from: 5, to: 2, perLength: 1 }])).toThrow(
      'end of the load is 2 mm',
    );
    expect(() => bendBeam(beamOf(1000, 100), []).momentAt(-1)).toThrow('place is -1 mm');
  });
});

describe('peakMoments', () => {
  it('finds what a fine search finds', () => {
    const part = fc.double({ min: 0, max: 1150, noNaN: true });
    fc.assert(
      fc.property(part, part, fc.double({ min: 0, max: 3000, noNaN: true }), (from, more, force) => {
        const beam = beamOf(1500, 300, 500);
        const bent = bendBeam(beam, [
          { kind: 'even', from, to: from + more, perLength: 2 },
          { kind: 'point', at: 2300, force },
        ]);
        const { sagging, hogging } = peakMoments(bent);
        const searched = Array.from({ length: 2301 }, (_, x) => bent.momentAt(x));
        const slack = 2 * 1e-9 * 1e6;
        expect(sagging.moment).toBeGreaterThanOrEqual(Math.max(...searched) - slack);
        expect(hogging.moment).toBeLessThanOrEqual(Math.min(...searched) + slack);
        expect(bent.momentAt(sagging.at)).toBeCloseTo(sagging.moment, 6);
        expect(sagging.moment).toBeLessThan(Math.max(...searched, 0) + 2 * 0.5 ** 2 + (force + 2300) * 0.5 + slack);
      }),
      { seed: SEED },
    );
  });
});

describe('beamCases', () => {
  it('puts the spot on the end with the longer overhang', () => {
    const at = (beam: Beam): unknown =>
      beamCases(beam, 0.2, { spread: 100, spot: 1000, person: 110 }).find((c) => c.name === 'spot at the end')!.loads;
    expect(at(beamOf(1500, 300, 500))).toEqual([{ kind: 'point', at: 2300, force: 1000 }]);
    expect(at(beamOf(1500, 500, 300))).toEqual([{ kind: 'point', at: 0, force: 1000 }]);
  });
});

describe('shearDeflection', () => {
  it('refuses wood without stiffness', () => {
    expect(shearDeflection(1000, 600, 1000, 600)).toBeCloseTo(1.2, 12);
    expect(() => shearDeflection(1000, 600, 1000, 0)).toThrow('shear modulus is 0 MPa');
  });
});
