import { describe, expect, test } from 'vitest';
import { rememberRuns, type Setting } from '../../lib/writers/pdf/remember-runs.ts';

/** A face of one document that counts how often it sets text. */
function face(): Setting & { asked: string[] } {
  const asked: string[] = [];
  return {
    asked,
    layoutRun(text, features) {
      asked.push(text);
      const glyphs = [...text].map((letter) => ({ id: letter.codePointAt(0)!, advanceWidth: 500, codePoints: [1] }));
      return { glyphs, positions: glyphs.map(() => ({})), advanceWidth: text.length * (features ? 400 : 500) };
    },
  };
}

describe('runs of text', () => {
  test('are set once for all documents of a face, with and without features', () => {
    const bytes = new Uint8Array(1);
    const [one, other] = [face(), face()];
    rememberRuns(one, bytes);
    rememberRuns(other, bytes);
    const first = one.layoutRun('1/2 in');
    expect(other.layoutRun('1/2 in')).toBe(first);
    expect(other.layoutRun('1/2 in', ['frac']).advanceWidth).toBe(2400);
    expect(one.layoutRun('1/2 in', ['frac']).advanceWidth).toBe(2400);
    expect([one.asked, other.asked]).toEqual([['1/2 in'], ['1/2 in']]);
  });

  test('are not those of another face, and asking twice to remember changes nothing', () => {
    const [regular, bold] = [face(), face()];
    rememberRuns(regular, new Uint8Array(1));
    rememberRuns(bold, new Uint8Array(1));
    rememberRuns(bold, new Uint8Array(1));
    regular.layoutRun('a');
    bold.layoutRun('a');
    bold.layoutRun('a');
    expect([regular.asked, bold.asked]).toEqual([['a'], ['a']]);
  });
});
