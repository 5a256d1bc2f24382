import { describe, expect, it } from 'vitest';
import { sag } from '../../lib/derive/checks/sag.ts';
import { cherry } from '../../lib/wood/species/cherry.ts';
import type { Changes } from '../written.ts';
import { applied } from './applied-fixes.ts';
import { handContext, words } from './contexts.ts';
import { fourLegs, postFrames } from './hand-bases.ts';
import { OWN_E, READING_ROOM } from './reading-room.ts';
import { movedBy, sampledTables, valuesBy } from './samples.ts';
import { boards, flat } from './trial-pieces.ts';
import { tried, untuned } from './tried.ts';

const END = 'someone sitting on the very end';
const MIDDLE = 'someone leaning on the middle, for a short time';

describe('sag of the reading-room table', () => {
  const findings = sag.run(tried('reading-table', READING_ROOM));
  const found = (check: string, load?: string): number =>
    findings.find((f) => f.check === check && (load === undefined || f.load === load))!.value!;

  // Worked values of the reading-room table, for E_L 10,300 MPa: own weight 0.1067049 mm, 100 kg spread 0.2050748 mm.
  it('at once is its own weight and 100 kg: 0.3118 mm of 2.3707', () => {
    expect((found('sag at once') * OWN_E) / (0.1067049 + 0.2050748)).toBeCloseTo(1, 5);
    expect(findings.find((f) => f.check === 'sag at once')!.limit).toBeCloseTo(2.370667, 6);
  });

  it('in time is twice that of its own weight: 0.2134 mm of 3.7042', () => {
    expect((found('sag in time') * OWN_E) / 0.2134098).toBeCloseTo(1, 5);
    expect(findings.find((f) => f.check === 'sag in time')!.limit).toBeCloseTo(3.704167, 6);
  });

  it('lifts its ends by 0.0705 and 0.1355 mm, of 1.19', () => {
    expect((found('overhang') * OWN_E) / (0.07050146 + 0.1354958)).toBeCloseTo(1, 5);
    expect(findings.find((f) => f.check === 'overhang')!.limit).toBeCloseTo(355.6 / 300, 6);
  });

  // 1079 N on the end give 1.65002 MPa below, of 48.17538 for 85 MPa; here with the weight of the overhang, w a²/2.
  it('strains its wood by 3.6 % with someone on the very end', () => {
    const own = (0.2392369 * 355.6 ** 2) / 2 / 232_538.02;
    const stress = (1.65002 * 110 * 9.81) / 1079 + own;
    const limit = (48.17538 * cherry.mor!.value) / 85;
    expect(found('bending stress', END) / (stress / limit)).toBeCloseTo(1, 4);
  });

  // 1 kN at the middle gives 1.529212 MPa below; with the weight of the top, w S²/8 - w a²/2.
  it('strains its wood by 3.6 % with someone on its middle', () => {
    const own = (0.2392369 * (1422.4 ** 2 / 8 - 355.6 ** 2 / 2)) / 232_538.02;
    const limit = (48.17538 * cherry.mor!.value) / 85;
    expect(found('bending stress', MIDDLE) / ((1.529212 + own) / limit)).toBeCloseTo(1, 4);
  });

  it('is well in every way', () => {
    expect(findings.map((f) => f.verdict)).toEqual(['ok', 'ok', 'ok', 'ok', 'ok']);
    expect(findings.every((f) => f.fixes.length === 0)).toBe(true);
  });
});

const WEAK: Changes = {
  'top.length': '12 ft',
  'top.thickness': '1 in',
  'top.edgeThickness': '3/4 in',
  'edgeJoint.tenonThickness': '1/4 in',
  'edgeJoint.gauge': '3/8 in',
};

describe('sag', () => {
  it('says so, in inches and in millimetres', () => {
    expect(sag.run(tried('reading-table', WEAK)).map(words)).toMatchInlineSnapshot(`
      [
        "change it | top T: 220 lb spread over the top and its own weight lower the middle 1 27/64 in; up to 3/16 in is well | top.thickness 2 1/2 in brings 98 % of the limit | frame.inset 30 9/16 in brings 100 % of the limit",
        "change it | top T: over the years it sags 29/32 in under its own weight; above 19/64 in it shows | top.thickness 1 15/16 in brings 95 % of the limit | frame.inset 25 7/8 in brings 100 % of the limit",
        "change it | top T: 220 lb spread over the top and its own weight move its ends 35/64 in; up to 0.046 in is well | top.thickness 3 in brings 98 % of the limit | frame.inset 29 1/8 in brings 97 % of the limit",
        "ok | top T: with 243 lb on the very end the wood works at 12 % of our working limit along the grain; up to 80 % is well",
        "ok | top T: with 225 lb on the middle the wood works at 26 % of our working limit along the grain; up to 80 % is well",
      ]
    `);
    expect(
      sag.run(tried('reading-table', { ...WEAK, 'top.length': '84 in' }, { units: 'mm' })).map(words),
    ).toMatchInlineSnapshot(`
      [
        "ok | top T: 100 kg spread over the top and its own weight lower the middle 2.2 mm; up to 2.4 mm is well",
        "ok | top T: over the years it sags 0.9 mm under its own weight; above 3.7 mm it shows",
        "change it | top T: 100 kg spread over the top and its own weight move its ends 1.5 mm; up to 1.1 mm is well | top.thickness 29 mm brings 94 % of the limit | top.edgeThickness 23 mm brings 100 % of the limit",
        "ok | top T: with 110 kg on the very end the wood works at 12 % of our working limit along the grain; up to 80 % is well",
        "ok | top T: with 102 kg on the middle the wood works at 12 % of our working limit along the grain; up to 80 % is well",
      ]
    `);
  });

  it('has fixes that work, and no lesser ones', () => {
    const context = tried('reading-table', WEAK);
    const all = sag.run(context).flatMap((finding) => applied(sag, context, finding));
    expect(all.length).toBeGreaterThanOrEqual(5);
    for (const { fix, brings, after, short } of all) {
      expect(after.verdict, fix).toBe('ok');
      expect(brings).toBe(`${Math.round((after.value! / after.limit!) * 100)} % of the limit`);
      expect(short?.verdict, fix).not.toBe('ok');
    }
  });

  it('gives the same figures and verdicts in both units', () => {
    for (const changes of [{}, WEAK]) {
      const [inches, metric] = (['in', 'mm'] as const).map((units) =>
        sag.run(untuned(tried('reading-table', changes, { units }))),
      );
      expect(inches!.map((f) => [f.value, f.verdict])).toEqual(metric!.map((f) => [f.value, f.verdict]));
    }
  });

  it('grows with its loads in a straight line', () => {
    const of = (spread: number): number[] =>
      sag.run(tried('reading-table', {}, { loads: { spread } })).map((f) => f.value!);
    const [none, once, twice] = [of(0), of(100), of(200)];
    none!.forEach((value, k) => {
      expect(twice![k]! - value).toBeCloseTo(2 * (once![k]! - value), 9);
    });
  });

  it('judges nothing without a top on two frames', () => {
    const needs = (assembly: Parameters<typeof handContext>[0]) => sag.run(handContext(assembly)).map(words);
    expect(needs(boards({ id: 'board', at: flat(0, 0, 0) }))).toEqual([
      'not checked | not checked: needs a top of one panel on a base',
    ]);
    expect(needs(postFrames({ at: [800] }))).toEqual(['not checked | not checked: needs two frames under the top']);
    expect(needs(fourLegs())[0]).toMatch(
      /^not checked \| not checked: needs a top that lies on frames alone; it lies on/,
    );
  });

  it('says what it assumes and what is still to be confirmed', () => {
    const [atOnce, , , stress] = sag.run(tried('reading-table'));
    expect(atOnce!.assumptions).toEqual(['a beam of the section halfway between the frames, held by them up and down']);
    expect(atOnce!.unconfirmed).toEqual([]);
    expect(stress!.unconfirmed).toEqual(['coefficients of variation of strength (FPL-GTR-282 table 5-6)']);
  });
});

describe('whatever the table', () => {
  const tables = sampledTables(2000, 40);

  // Of the strain that is not so: a low ridge under a flat top adds less stiffness than distance from the middle.
  it('a thicker top never sags more', () => {
    let compared = 0;
    for (const { name, context } of tables) {
      const thicker = movedBy(context, 'top.thickness', 2);
      if (!thicker) continue;
      const [before, after] = [valuesBy(sag, context), valuesBy(sag, thicker)];
      for (const [what, value] of after) {
        if (what.startsWith('bending stress')) continue;
        compared += 1;
        expect(value, `${what}: ${name}`).toBeLessThanOrEqual(before.get(what)! + 1e-9);
      }
    }
    expect(compared).toBeGreaterThan(80);
  });

  it('frames further apart let the middle down more', () => {
    let compared = 0;
    for (const { name, context } of tables) {
      const wider = movedBy(context, 'frame.inset', -8);
      if (!wider) continue;
      const [before, after] = [context, wider].map((c) => {
        const [atOnce] = sag.run(untuned(c));
        return atOnce!.value!;
      });
      compared += 1;
      expect(after, name).toBeGreaterThanOrEqual(before! - 1e-9);
    }
    expect(compared).toBeGreaterThan(10);
  });

  it('its mirror image sags alike', () => {
    const at = (frames: readonly number[]): (number | undefined)[] =>
      sag.run(handContext(postFrames({ at: frames }))).map((f) => f.value);
    const [one, other] = [at([150, 1200]), at([400, 1450])];
    one.forEach((value, k) => {
      expect(value).toBeCloseTo(other[k]!, 9);
    });
  });
});
