import { describe, expect, it } from 'vitest';
import { slotCover } from '../../lib/derive/checks/slot-cover.ts';
import type { Finding } from '../../lib/model/finding.ts';
import { expectPrinted, INCH } from '../printed.ts';
import { heightsAt, readStl } from '../readers/stl.ts';
import { type Changes, written } from '../written.ts';
import { contextOf, verdicts, words } from './contexts.ts';

const run = (changes: Changes, units?: 'in' | 'mm'): Finding[] =>
  slotCover.run(contextOf('reading-table', changes, units));

const isUnderside = (finding: Finding): boolean => finding.because.includes('after the taper');
const undersideOf = (findings: readonly Finding[], part: string): Finding =>
  findings.find((f) => f.part === part && isUnderside(f))!;
const showFaceOf = (findings: readonly Finding[], part: string): Finding =>
  findings.find((f) => f.part === part && !isUnderside(f))!;

const GAUGE = 'edgeJoint.gauge';

/** A clean-up of 1/32 in may still come off the underside. */
const CLEAN_UP = 1 / 32;

describe('the cover table of the worked example, measured on the solids of the strips', () => {
  const rows = [
    [0, 5, '1.350', '0.850'],
    [5, 6, '1.069', '0.569'],
    [10, 7, '0.788', '0.288'],
    [15, 8, '0.506', '0.006'],
  ] as const;

  /** Wood under the far end of the first slot of a joint, x in from the center line, in its outer strip. */
  async function covers(gauge: string): Promise<number[]> {
    const build = await written('reading-table', { [GAUGE]: gauge }, ['stl']);
    return rows.map(([x, strip]) => {
      const mesh = readStl(build.bytes(`solids/t${strip}-top-strip-${strip}-mm.stl`));
      // Show face, slot, underside: four passes of an upright line just inside the floor of the slot.
      const passes = heightsAt(mesh, 4 * INCH, (x + 1) * INCH - 0.02);
      expect(passes).toHaveLength(4);
      return (passes[3]! - passes[2]!) / INCH - CLEAN_UP;
    });
  }

  it('has slots gauged 5/8 in from the show face well covered at all joints', async () => {
    (await covers('5/8 in')).forEach((cover, k) => {
      expectPrinted(cover, rows[k]![2], `joint at ${rows[k]![0]}`, 0.0005);
    });
  });

  it('has slots centered in the blank all but break through at the outermost joint', async () => {
    (await covers('1 1/8 in')).forEach((cover, k) => {
      expectPrinted(cover, rows[k]![3], `joint at ${rows[k]![0]}`, 0.0005);
    });
  });
});

describe('slot cover', () => {
  it('is content with the worked example: 0.506 in under the outermost slots, 0.4375 over all of them', () => {
    const findings = run({});
    expect(verdicts(findings)).toEqual(['ok']);
    expect(findings).toHaveLength(16);
    expectPrinted(undersideOf(findings, 'top/strip-8').value! / INCH, '0.506', 'strip 8');
    expectPrinted(undersideOf(findings, 'top/strip-1').value! / INCH, '0.506', 'strip 1');
    for (const n of [1, 2, 3, 4, 5, 6, 7, 8]) {
      expectPrinted(showFaceOf(findings, `top/strip-${n}`).value! / INCH, '0.4375', `show face of strip ${n}`);
    }
  });

  it('is not content with slots centered in the blank: 0.006 in is left', () => {
    const findings = run({ [GAUGE]: '1 1/8 in' });
    expectPrinted(undersideOf(findings, 'top/strip-8').value! / INCH, '0.006', 'strip 8');
    // At the joint plane itself: 1.40625 - 1.125 - 0.1875 - 0.03125.
    expectPrinted(undersideOf(findings, 'top/strip-7').value! / INCH, '0.0625', 'strip 7');
    // 1.6875 - 1.34375 = 0.34375 at joint 10.
    expectPrinted(undersideOf(findings, 'top/strip-6').value! / INCH, '0.34375', 'strip 6');
    expect(['top/strip-8', 'top/strip-7', 'top/strip-6'].map((part) => undersideOf(findings, part).verdict)).toEqual([
      'change it',
      'change it',
      'ok',
    ]);
  });

  it('asks for another look between half of the wanted cover and all of it', () => {
    // 0.506 - (0.95 - 0.625) = 0.181 in: more than 1/8, less than 1/4.
    const finding = undersideOf(run({ [GAUGE]: '0.95 in' }), 'top/strip-8');
    expectPrinted(finding.value! / INCH, '0.181', 'cover');
    expect(finding.verdict).toBe('look again');
  });

  it('says so, in inches and in millimetres', () => {
    const centered = { [GAUGE]: '1 1/8 in' };
    expect(words(undersideOf(run(centered), 'top/strip-8'))).toMatchInlineSnapshot(
      `"change it | strip T8: after the taper 0 in of wood stays under its slots; 1/4 in is wanted | gauge the slots 7/8 in from the show face"`,
    );
    expect(words(undersideOf(run(centered, 'mm'), 'top/strip-8'))).toMatchInlineSnapshot(
      `"change it | strip T8: after the taper 0.1 mm of wood stays under its slots; 6.4 mm is wanted | gauge the slots 22.3 mm from the show face"`,
    );
    expect(words(undersideOf(run({ [GAUGE]: '1 1/4 in' }), 'top/strip-8'))).toMatchInlineSnapshot(
      `"change it | strip T8: after the taper a slot comes out of the underside by 1/8 in; 1/4 in is wanted | gauge the slots 7/8 in from the show face"`,
    );
    expect(words(undersideOf(run({ [GAUGE]: '1 1/4 in' }, 'mm'), 'top/strip-8'))).toMatchInlineSnapshot(
      `"change it | strip T8: after the taper a slot comes out of the underside by 3.1 mm; 6.4 mm is wanted | gauge the slots 22.3 mm from the show face"`,
    );
    expect(words(showFaceOf(run({ [GAUGE]: '1/2 in' }), 'top/strip-8'))).toMatchInlineSnapshot(
      `"look again | strip T8: 5/16 in of wood stays between the show face and its slots; 3/8 in is wanted | gauge the slots 9/16 in from the show face"`,
    );
    expect(words(showFaceOf(run({ [GAUGE]: '1/2 in' }, 'mm'), 'top/strip-8'))).toMatchInlineSnapshot(
      `"look again | strip T8: 7.9 mm of wood stays between the show face and its slots; 9.6 mm is wanted | gauge the slots 14.3 mm from the show face"`,
    );
  });

  it('has a fix that works: the nearest gauge that any strip asks for', () => {
    expect(undersideOf(run({ [GAUGE]: '1 1/8 in' }), 'top/strip-8').fixes).toEqual([
      'gauge the slots 7/8 in from the show face',
    ]);
    expect(verdicts(run({ [GAUGE]: '7/8 in' }))).toEqual(['ok']);
    expect(verdicts(run({ [GAUGE]: '29/32 in' }))).toEqual(['look again', 'ok']);
  });

  it('has a fix that works over the slots: 5/16 in is over them at a gauge of 1/2', () => {
    const finding = showFaceOf(run({ [GAUGE]: '1/2 in' }), 'top/strip-8');
    expectPrinted(finding.value! / INCH, '0.3125', 'cover');
    expect(finding.verdict).toBe('look again');
    expect(finding.fixes).toEqual(['gauge the slots 9/16 in from the show face']);
    expect(verdicts(run({ [GAUGE]: '9/16 in' }))).toEqual(['ok']);
    expect(verdicts(run({ [GAUGE]: '17/32 in' }))).toEqual(['look again', 'ok']);
  });

  const thinEdge = { 'top.edgeThickness': '3/4 in', 'bearer.depth': '4 1/2 in' };

  it('has a fix that works where no gauge does: thinner tenons', () => {
    // t(16) = 2.25 - 16 x 0.075 = 1.05; less 1/32, 1/4 and 3/8 leaves 0.394 in for the tenon of 1/2.
    const thick = { ...thinEdge, 'edgeJoint.tenonThickness': '1/2 in' };
    const finding = undersideOf(run(thick), 'top/strip-8');
    expectPrinted(finding.value! / INCH, '0.144', '1.05 - 0.625 - 0.25 - 0.03125');
    expect(finding.fixes).toEqual(['use tenons 11/32 in thick, gauged 37/64 in from the show face']);
    const mended = { ...thick, 'edgeJoint.tenonThickness': '11/32 in', [GAUGE]: '37/64 in' };
    expect(verdicts(run(mended))).toEqual(['ok']);
    expect(undersideOf(run(thick, 'mm'), 'top/strip-8').fixes).toEqual([
      'use tenons 9.2 mm thick, gauged 14.5 mm from the show face',
    ]);
    expect(verdicts(run({ ...thick, 'edgeJoint.tenonThickness': '9.2 mm', [GAUGE]: '14.5 mm' }))).toEqual(['ok']);
  });

  it('has a fix that works where no tenon does: a thicker top, or none', () => {
    const thin = { ...thinEdge, 'top.edgeThickness': '3/8 in', 'top.undersideEdgeSize': '1/8 in' };
    const finding = undersideOf(run(thin), 'top/strip-8');
    // t(16) = 2.25 - 16 x 0.09375 = 0.75: 0.75 - 0.8125 - 0.03125.
    expectPrinted(finding.value! / INCH, '-0.094', 'cover');
    expect(finding.verdict).toBe('change it');
    expect(words(finding)).toMatchInlineSnapshot(
      `"change it | strip T8: after the taper a slot comes out of the underside by 3/32 in; 1/4 in is wanted | make the top 5/16 in thicker there and gauge the slots 9/16 in from the show face, or leave the tenons out"`,
    );
    expect(verdicts(run({ ...thin, 'edgeJoint.tenons': 'no' }))).toEqual(['ok']);
  });

  it('says that there are no slots', () => {
    expect(run({ 'edgeJoint.tenons': 'no' }).map((f) => words(f))).toEqual(['ok | there are no slots in a top']);
  });

  it('looks at the show boards of a top in two layers', () => {
    const findings = slotCover.run(contextOf('study-table'));
    expect(verdicts(findings)).toEqual(['ok']);
    expect(new Set(findings.map((f) => f.part))).toEqual(
      new Set(['top/strip-1', ...[2, 3, 4, 5].map((n) => `top/strip-${n}/show`), 'top/strip-6']),
    );
  });
});
