import { describe, expect, it } from 'vitest';
import { lumberThickness } from '../../lib/derive/checks/lumber-thickness.ts';
import type { Finding } from '../../lib/model/finding.ts';
import { INCH } from '../printed.ts';
import type { Changes } from '../written.ts';
import { contextOf, ofPart, words } from './contexts.ts';

const run = (changes: Changes, units?: 'in' | 'mm'): Finding[] =>
  lumberThickness.run(contextOf('reading-table', changes, units));

const posts = (thickness: string, units?: 'in' | 'mm'): Finding =>
  ofPart(run({ 'post.thickness': thickness }, units), 'frame-a/post-1');

// 16/4, the thickest, dresses to 3 3/4 in.
describe('lumber thickness', () => {
  it('has one finding for each row of the cut list that lumber is bought for', () => {
    const findings = run({});
    expect(findings.map((f) => f.verdict)).toEqual(Array.from({ length: 9 }, () => 'ok'));
    expect(findings.map((f) => f.part)).toContain('top/strip-2');
    // 1.6875 + 0.0625 is exactly what 8/4 dresses to, 1 3/4 in; floating point must not make it 10/4.
    expect(ofPart(findings, 'top/strip-2').value).toBeCloseTo(44.45, 9);
    expect(ofPart(findings, 'top/strip-2').because).toContain('8/4 dresses to 1 3/4 in, 0 in to spare');
  });

  it('takes the thickest lumber for 3 3/4 in and none for more', () => {
    expect(posts('3 3/4 in')).toMatchObject({ verdict: 'ok', value: 3.75 * INCH, limit: 3.75 * INCH });
    expect(posts('3 49/64 in').verdict).toBe('look again');
    expect(posts('4 in')).toMatchObject({ verdict: 'look again', value: 4 * INCH, limit: 3.75 * INCH });
  });

  it('says so, in inches and in millimetres', () => {
    expect(words(posts('4 in'))).toMatchInlineSnapshot(
      `"look again | post P1 to P4 must be milled to 4 in: no lumber is that thick; 16/4 dresses to 3 3/4 in | glue the piece up from two layers, or make it thinner"`,
    );
    expect(words(posts('4 in', 'mm'))).toMatchInlineSnapshot(
      `"look again | post P1 to P4 must be milled to 101.6 mm: no lumber is that thick; 16/4 dresses to 95.2 mm | glue the piece up from two layers, or make it thinner"`,
    );
    expect(words(ofPart(run({}), 'top/strip-2'))).toMatchInlineSnapshot(
      `"ok | strip T2, T7 must be milled to 1 3/4 in: 8/4 dresses to 1 3/4 in, 0 in to spare"`,
    );
    expect(words(ofPart(run({}, 'mm'), 'top/strip-2'))).toMatchInlineSnapshot(
      `"ok | strip T2, T7 must be milled to 44.5 mm: 8/4 dresses to 44.5 mm, 0 mm to spare"`,
    );
  });

  it('has a fix that works: thinner, to what the thickest dresses to', () => {
    expect(posts('4 in').fixes).toEqual(['glue the piece up from two layers, or make it thinner']);
    expect(posts('4 in').because).toContain('16/4 dresses to 3 3/4 in');
    expect(posts('3 3/4 in').fixes).toEqual([]);
  });
});
