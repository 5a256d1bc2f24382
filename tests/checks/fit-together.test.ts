import { describe, expect, it } from 'vitest';
import { fitTogether } from '../../lib/derive/checks/fit-together.ts';
import type { Finding } from '../../lib/model/finding.ts';
import { contextOf, handContext, words } from './contexts.ts';
import { boards, flat } from './trial-pieces.ts';

/** Two boards, one on the other; the upper one is lifted by a distance, mm, and pushed aside by another. */
const stacked = (lift: number, aside = 0, units: 'in' | 'mm' = 'in'): Finding[] =>
  fitTogether.run(
    handContext(boards({ id: 'lower', at: flat(0, 0, 0) }, { id: 'upper', at: flat(aside, 0, 30 + lift) }), units),
  );

describe('pieces fit together', () => {
  it('is content with boards that touch, and with what rounding leaves', () => {
    expect(stacked(0).map((f) => f.verdict)).toEqual(['ok']);
    expect(stacked(-0.009).map((f) => f.verdict)).toEqual(['ok']);
    expect(stacked(0.04).map((f) => f.verdict)).toEqual(['ok']);
  });

  it('finds by how much one reaches into the other: down, or out at the side if that is less', () => {
    expect(stacked(-2)).toMatchObject([{ verdict: 'change it', part: 'lower', where: 'upper', limit: 0 }]);
    expect(stacked(-2)[0]!.value).toBeCloseTo(2, 9);
    expect(stacked(-20, 195)[0]!.value).toBeCloseTo(5, 9);
  });

  it('finds a board that hangs in the air', () => {
    expect(stacked(0.1)).toMatchObject([{ verdict: 'change it', part: 'upper' }]);
    expect(stacked(0, 200.1)).toMatchObject([{ verdict: 'change it', part: 'upper' }]);
    expect(stacked(0, 200).map((f) => f.verdict)).toEqual(['ok']);
  });

  it('does not take a long chain of boards for one that floats', () => {
    const chain = [0, 1, 2, 3, 4].map((k) => ({ id: `board-${k}`, at: flat(0, 0, 30 * k) }));
    expect(fitTogether.run(handContext(boards(...chain))).map((f) => f.verdict)).toEqual(['ok']);
    expect(fitTogether.run(handContext(boards(...chain.filter((_, k) => k !== 2)))).map((f) => f.part)).toEqual([
      'board-3',
      'board-4',
    ]);
  });

  it('says so, in inches and in millimetres', () => {
    expect(stacked(-2).map(words)).toMatchInlineSnapshot(`
      [
        "change it | board X1 and board X2 reach into each other by 3/32 in | move or shorten one of them by 3/32 in",
      ]
    `);
    expect(stacked(-2, 0, 'mm').map(words)).toMatchInlineSnapshot(`
      [
        "change it | board X1 and board X2 reach into each other by 2 mm | move or shorten one of them by 2 mm",
      ]
    `);
    expect(stacked(1).map(words)).toMatchInlineSnapshot(`
      [
        "change it | board X2 touches nothing that stands on the floor | join it to a neighbor",
      ]
    `);
    expect(stacked(0).map(words)).toMatchInlineSnapshot(`
      [
        "ok | all 2 pieces touch without reaching into each other, and hang together down to the floor",
      ]
    `);
  });

  it('has fixes that work: 3/32 in, 2 mm, or a neighbor', () => {
    expect(stacked(-2)[0]!.fixes).toEqual(['move or shorten one of them by 3/32 in']);
    expect(stacked(-2, 0, 'mm')[0]!.fixes).toEqual(['move or shorten one of them by 2 mm']);
    // Moved by that much they no longer reach into each other; to touch they must not go further.
    expect(stacked(-2 + 2, 0, 'mm').map((f) => f.verdict)).toEqual(['ok']);
    expect(stacked(-2 + (3 / 32) * 25.4).map((f) => f.because)).not.toContain('reach into each other');
    const joined = boards(
      { id: 'lower', at: flat(0, 0, 0) },
      { id: 'upper', at: flat(0, 0, 31) },
      { id: 'wedge', at: flat(0, 0, 30), size: [20, 100, 1] },
    );
    expect(fitTogether.run(handContext(joined)).map((f) => f.verdict)).toEqual(['ok']);
  });

  it('finds nothing in the designs', () => {
    for (const name of ['reading-table', 'meeting-table', 'study-table', 'reading-stool'] as const) {
      expect(fitTogether.run(contextOf(name)).map((f) => f.verdict)).toEqual(['ok']);
    }
  });
});
