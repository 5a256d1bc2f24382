import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compareMarks, marksText } from '../../lib/derive/cut-list/building-order.ts';
import { marksInText } from './marks-in-text.ts';

describe('marks in a list', () => {
  it.each([
    [['T1'], 'T1'],
    [['T2', 'T1'], 'T1, T2'],
    [['T3', 'T1', 'T2'], 'T1 to T3'],
    [['T1', 'T7', 'T8', 'T9', 'T10', 'T12'], 'T1, T7 to T10, T12'],
    [['T4A', 'T4B'], 'T4A, T4B'],
    [['T3S', 'T1S', 'T2S', 'T4U'], 'T1S to T3S, T4U'],
    [['N9', 'N10', 'N11', 'E1'], 'E1, N9 to N11'],
    [['A', 'B1', 'B2', 'B3'], 'A, B1 to B3'],
  ])('%j are written %s', (marks, text) => {
    expect(marksText(marks)).toBe(text);
  });

  it('stand in the order of letters, then numbers as numbers', () => {
    expect(['T10', 'T2', 'P1', 'T4B', 'T4A', 'T4'].sort(compareMarks)).toEqual(['P1', 'T2', 'T4', 'T4A', 'T4B', 'T10']);
  });

  it('can be read back from the text, whatever they are', () => {
    const mark = fc
      .tuple(fc.constantFrom('T', 'E', 'N', 'L'), fc.integer({ min: 1, max: 40 }), fc.constantFrom('', 'A', 'B', 'S'))
      .map(([letter, number, rest]) => `${letter}${number}${rest}`);
    fc.assert(
      fc.property(fc.uniqueArray(mark, { minLength: 1, maxLength: 60 }), (marks) => {
        expect(marksInText(marksText(marks)).sort()).toEqual([...marks].sort());
      }),
      { seed: 20261125 },
    );
  });
});
