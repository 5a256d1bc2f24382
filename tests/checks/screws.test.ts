import { describe, expect, it } from 'vitest';
import { screwCover } from '../../lib/derive/checks/screw-cover.ts';
import type { Finding } from '../../lib/model/finding.ts';
import { expectPrinted, INCH } from '../printed.ts';
import type { Changes } from '../written.ts';
import { contextOf, under, verdicts, words } from './contexts.ts';

const run = (name: 'screw cover' | 'screw thread', changes: Changes, units?: 'in' | 'mm'): Finding[] =>
  under(screwCover, name, contextOf('reading-table', changes, units));

const at = (findings: readonly Finding[], n: number): Finding =>
  findings.find((f) => f.where === `frame-a/fixing-${n}`)!;

const REACH = 'fixing.penetration';
const reach = (length: string): Changes => ({ [REACH]: length, 'fixing.screwLength': '3 in' });

// t - reach at 0, 6.5 and 13 in from the center line, t being 2.25, 1.884375 and 1.51875 in; 3/8 in is wanted.
describe('screw cover', () => {
  it('is content with the worked example', () => {
    const findings = run('screw cover', {});
    expect(verdicts(findings)).toEqual(['ok']);
    expect(findings).toHaveLength(10);
    const covers = [1, 2, 3].map((n) => at(findings, n).value! / INCH);
    expectPrinted(covers[0]!, '0.519', 'at 13');
    expectPrinted(covers[1]!, '0.884', 'at 6.5');
    expectPrinted(covers[2]!, '1.250', 'in the middle');
  });

  it('asks for another look at 0.269 in and for a change at 0.019', () => {
    const shallow = at(run('screw cover', reach('1 1/4 in')), 1);
    expectPrinted(shallow.value! / INCH, '0.269', '1.51875 - 1.25');
    expect(shallow.verdict).toBe('look again');
    const deep = at(run('screw cover', reach('1 1/2 in')), 1);
    expectPrinted(deep.value! / INCH, '0.019', '1.51875 - 1.5');
    expect(deep.verdict).toBe('change it');
    expect(at(run('screw cover', reach('1 1/2 in')), 2).verdict).toBe('ok'); // 0.384
  });

  it('says so, in inches and in millimetres', () => {
    const deep = (n: number, units: 'in' | 'mm'): string => words(at(run('screw cover', reach('1 5/8 in'), units), n));
    expect(deep(1, 'in')).toMatchInlineSnapshot(
      `"change it | top T: a screw 13 in from the center line comes through by 1/8 in; 3/8 in is wanted | let it reach 1 1/8 in into the wood"`,
    );
    expect(deep(1, 'mm')).toMatchInlineSnapshot(
      `"change it | top T: a screw 330.2 mm from the center line comes through by 2.7 mm; 9.6 mm is wanted | let it reach 29 mm into the wood"`,
    );
    expect(deep(2, 'in')).toMatchInlineSnapshot(
      `"look again | top T: 1/4 in of wood stays ahead of a screw 6 1/2 in from the center line; 3/8 in is wanted | let it reach 1 1/2 in into the wood"`,
    );
    expect(deep(2, 'mm')).toMatchInlineSnapshot(
      `"look again | top T: 6.5 mm of wood stays ahead of a screw 165.1 mm from the center line; 9.6 mm is wanted | let it reach 38.3 mm into the wood"`,
    );
    expect(deep(3, 'in')).toMatchInlineSnapshot(
      `"ok | top T: 5/8 in of wood stays ahead of the fixed screw; 3/8 in is wanted"`,
    );
  });

  it('has a fix that works: 1 1/8 in at 13', () => {
    const wanted = 'let it reach 1 1/8 in into the wood'; // 1.51875 - 0.375 = 1.144, down to 1/32
    expect(at(run('screw cover', reach('1 1/2 in')), 1).fixes).toEqual([wanted]);
    expect(verdicts(run('screw cover', reach('1 1/8 in')))).toEqual(['ok']);
    expect(verdicts(run('screw cover', reach('1 5/32 in')))).toEqual(['look again', 'ok']);
  });

  it('looks at the screws that hold a cleat to its leg as well', () => {
    const findings = under(screwCover, 'screw cover', contextOf('study-table'));
    expect(verdicts(findings)).toEqual(['ok']);
    const leg = findings.filter((f) => f.part === 'frame-a/panel');
    expect(leg).toHaveLength(3);
    // Half of a leg of 1 3/4 in, 7/8, is the most that they reach.
    for (const finding of leg) expectPrinted(finding.value! / INCH, '0.875', 'behind a screw in the leg');
    expect(leg.filter((f) => f.because.includes('the fixed screw'))).toHaveLength(1);
  });

  it('says that there are no screws', () => {
    const findings = under(screwCover, 'screw cover', contextOf('reading-stool'));
    expect(findings.map(words)).toEqual(['ok | there are no screws']);
  });
});

// Four shank diameters: no. 10 is 4.83 mm, so 19.32 mm; no. 14 is 6.15 mm, so 24.6 mm.
describe('screw thread', () => {
  it('is content with 1 in of a no. 10 and not with 3/4', () => {
    expect(verdicts(run('screw thread', {}))).toEqual(['ok']);
    const short = at(run('screw thread', { [REACH]: '3/4 in' }), 3);
    expect(short.verdict).toBe('look again');
    expect(short.value).toBeCloseTo(19.05, 9);
    expect(short.limit).toBeCloseTo(19.32, 9);
  });

  it('measures what is left of a screw that is too short to reach as far as is asked', () => {
    // 2 1/2 in of screw through 3.5 in of bearer less a counterbore: the design sinks the head until the reach is met.
    const findings = run('screw thread', { [REACH]: '1/2 in', 'fixing.gauge': '14' });
    expect(at(findings, 1).value).toBeCloseTo(12.7, 9);
    expect(at(findings, 1).limit).toBeCloseTo(24.6, 9);
  });

  it('says so, in inches and in millimetres', () => {
    const short = (units: 'in' | 'mm'): string => words(at(run('screw thread', { [REACH]: '3/4 in' }, units), 2));
    expect(short('in')).toMatchInlineSnapshot(
      `"look again | top T: 3/4 in of thread hold a screw 6 1/2 in from the center line; 25/32 in is wanted | let it reach 25/32 in into the wood, by a longer screw or a deeper counterbore"`,
    );
    expect(short('mm')).toMatchInlineSnapshot(
      `"look again | top T: 19 mm of thread hold a screw 165.1 mm from the center line; 19.4 mm is wanted | let it reach 19.4 mm into the wood, by a longer screw or a deeper counterbore"`,
    );
  });

  it('has a fix that works: 25/32 in', () => {
    expect(at(run('screw thread', { [REACH]: '3/4 in' }), 1).fixes[0]).toContain('let it reach 25/32 in');
    expect(verdicts(run('screw thread', { [REACH]: '25/32 in' }))).toEqual(['ok']);
    expect(at(run('screw thread', { [REACH]: '3/4 in' }, 'mm'), 1).fixes[0]).toContain('let it reach 19.4 mm');
    expect(verdicts(run('screw thread', { [REACH]: '19.4 mm' }))).toEqual(['ok']);
  });
});
