import { describe, expect, it } from 'vitest';
import { edgeThickness } from '../../lib/derive/checks/edge-thickness.ts';
import type { Finding } from '../../lib/model/finding.ts';
import { INCH } from '../printed.ts';
import type { Changes } from '../written.ts';
import { contextOf, under, words } from './contexts.ts';

const run = (name: 'edge thickness' | 'edge land', changes: Changes, units?: 'in' | 'mm'): Finding => {
  const [found, ...more] = under(edgeThickness, name, contextOf('reading-table', changes, units));
  expect(more).toEqual([]);
  return found!;
};

/** A thin edge, and a bearer deep enough for the steeper V that comes with it. */
const edge = (thickness: string): Changes => ({ 'top.edgeThickness': thickness, 'bearer.depth': '4 1/2 in' });

describe('edge thickness', () => {
  it('is content with 1 1/8 and with 3/4 in, wants another look at 11/16 and a change under 1/2', () => {
    const verdict = (thickness: string): string => run('edge thickness', edge(thickness)).verdict;
    expect(['1 1/8 in', '3/4 in', '11/16 in', '1/2 in', '31/64 in'].map(verdict)).toEqual([
      'ok',
      'ok',
      'look again',
      'look again',
      'change it',
    ]);
    expect(run('edge thickness', edge('11/16 in')).value).toBeCloseTo((11 / 16) * INCH, 9);
    expect(run('edge thickness', edge('11/16 in')).limit).toBeCloseTo(0.75 * INCH, 9);
  });

  it('says so, in inches and in millimetres', () => {
    expect(words(run('edge thickness', edge('0.7 in')))).toMatchInlineSnapshot(
      `"look again | top T: its long edges are 11/16 in thick; under 3/4 in they dent and chip in use | make the edges 3/4 in thick"`,
    );
    expect(words(run('edge thickness', edge('0.7 in'), 'mm'))).toMatchInlineSnapshot(
      `"look again | top T: its long edges are 17.7 mm thick; under 19.1 mm they dent and chip in use | make the edges 19.1 mm thick"`,
    );
    expect(words(run('edge thickness', {}))).toMatchInlineSnapshot(
      `"ok | top T: its long edges are 1 1/8 in thick; under 3/4 in they dent and chip in use"`,
    );
  });

  it('has a fix that works: 3/4 in, 19.1 mm', () => {
    expect(run('edge thickness', edge('1/2 in')).fixes).toEqual(['make the edges 3/4 in thick']);
    expect(run('edge thickness', edge('1/2 in'), 'mm').fixes).toEqual(['make the edges 19.1 mm thick']);
    expect(run('edge thickness', edge('19.1 mm'), 'mm').verdict).toBe('ok');
  });
});

// Edge less both profiles: 7/8 - 3/8 - 7/16 = 1/16 in, which the rules refuse; 7/8 - 3/8 - 13/32 = 3/32 in. 1/8 is wanted.
describe('edge land', () => {
  const profiles = (show: string, underside: string): Changes => ({
    ...edge('7/8 in'),
    'top.showEdgeSize': show,
    'top.undersideEdgeSize': underside,
  });

  it('counts both profiles, and none that is square', () => {
    expect(run('edge land', {}).value).toBeCloseTo(0.75 * INCH, 9); // 1 1/8 - 1/8 - 1/4
    expect(run('edge land', { 'top.showEdge': 'square' }).value).toBeCloseTo(0.875 * INCH, 9);
    const narrow = run('edge land', profiles('3/8 in', '13/32 in'));
    expect(narrow.value).toBeCloseTo((3 / 32) * INCH, 9);
    expect(narrow.verdict).toBe('look again');
    expect(run('edge land', profiles('3/8 in', '3/8 in')).verdict).toBe('ok');
  });

  it('says so, in inches and in millimetres', () => {
    expect(words(run('edge land', profiles('3/8 in', '13/32 in')))).toMatchInlineSnapshot(
      `"look again | top T: between the profiles 3/32 in of the edge stays flat; 1/8 in is wanted | take 1/32 in off the profiles together"`,
    );
    expect(words(run('edge land', profiles('3/8 in', '13/32 in'), 'mm'))).toMatchInlineSnapshot(
      `"look again | top T: between the profiles 2.3 mm of the edge stays flat; 3.2 mm is wanted | take 0.8 mm off the profiles together"`,
    );
  });

  it('has a fix that works: 1/32 in off the profiles together', () => {
    expect(run('edge land', profiles('3/8 in', '13/32 in')).fixes).toEqual(['take 1/32 in off the profiles together']);
    expect(run('edge land', profiles('11/32 in', '13/32 in')).verdict).toBe('ok');
  });
});
