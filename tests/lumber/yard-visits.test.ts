import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pileOf, type YardPile } from '../../lib/derive/lumber/yard-pile.ts';
import { yardVisits } from '../../lib/derive/lumber/yard-visits.ts';

const INCH = 25.4;
const KERF = INCH / 8;

/** Boards that are all alike and clear: 8 in by 100 in of 8/4. */
const ALIKE: YardPile = {
  thickness: 2 * INCH,
  width: [8 * INCH, 8 * INCH],
  length: [100 * INCH, 100 * INCH],
  clear: 1,
};
/** Board feet of one of them: 2 x 8 x 100 / 144. */
const FEET = 1600 / 144;

const inches = (pieces: number, width: number, length: number) => ({
  pieces,
  width: width * INCH,
  length: length * INCH,
});

describe('board feet that are enough', () => {
  test('of clear boards all alike: as many boards as a count by hand gives', () => {
    const enough = (...needs: ReturnType<typeof inches>[]) => yardVisits(needs, ALIKE, KERF);
    const boards = (count: number) => {
      const feet = expect.closeTo(count * FEET, 9);
      return { in50: feet, in80: feet, in95: feet };
    };
    // 7 lanes of 1 in and 6 kerfs of 1/8 in fill 7 3/4 of 8 in; 89 pieces of 1 in and 88 kerfs fill the 100 in.
    expect(enough(inches(7 * 89, 1, 1))).toEqual(boards(1));
    expect(enough(inches(7 * 89 + 1, 1, 1))).toEqual(boards(2));
    // Two of 49 in end to end, and one lane of 5 in a board: three boards for five.
    expect(enough(inches(5, 5, 49))).toEqual(boards(3));
    // A lane of 5 in beside one of 2 7/8 in fills the width to the last kerf.
    expect(enough(inches(2, 5, 49), inches(2, 2.875, 49))).toEqual(boards(1));
    expect(enough(inches(2, 5, 49), inches(2, 2.9, 49))).toEqual(boards(2));
  });

  test('more is never less, never under the net, and sure costs more than likely', () => {
    const need = fc.record({
      pieces: fc.integer({ min: 1, max: 6 }),
      width: fc.integer({ min: 40, max: 150 }),
      length: fc.integer({ min: 300, max: 1500 }),
    });
    fc.assert(
      fc.property(fc.array(need, { minLength: 1, maxLength: 4 }), (needs) => {
        const pile = pileOf('fas', 2 * INCH);
        const found = yardVisits(needs, pile, KERF, 40)!;
        const net = needs.reduce((all, n) => all + n.pieces * n.width * n.length, 0) * pile.thickness;
        expect(found.in50).toBeGreaterThanOrEqual(net / (144 * INCH ** 3) - 1e-9);
        expect(found.in80).toBeGreaterThanOrEqual(found.in50);
        expect(found.in95).toBeGreaterThanOrEqual(found.in80);
      }),
      { seed: 3, numRuns: 60 },
    );
  });

  test('what no board can give is said, and the same question has the same answer', () => {
    expect(yardVisits([inches(1, 20, 50)], pileOf('fas', 2 * INCH), KERF)).toBeUndefined();
    const ask = () => yardVisits([inches(4, 5.1875, 86)], pileOf('fas', 2 * INCH), KERF);
    expect(ask()).toEqual(ask());
  });
});
