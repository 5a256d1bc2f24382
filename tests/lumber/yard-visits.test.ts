import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import design from '../../designs/reading-table/design.ts';
import shop from '../../designs/shop.ts';
import { makeJob } from '../../lib/build/job.ts';
import { buyingList } from '../../lib/derive/lumber/buying-list.ts';
import { cutPlanOf } from '../../lib/derive/lumber/cut-plan/plan-cuts.ts';
import { loadSolver } from '../../lib/derive/lumber/master.ts';
import { seeded } from '../../lib/derive/lumber/strip-plan/seeded.ts';
import { boardsOf, type DrawnBoard, pileOf, type YardPile } from '../../lib/derive/lumber/yard-pile.ts';
import { visitOnce } from '../../lib/derive/lumber/yard-visit.ts';
import { yardVisits } from '../../lib/derive/lumber/yard-visits.ts';
import type { ClassWanted, PieceNeed, YardSaw } from '../../lib/derive/lumber/yard-wanted.ts';
import { readValues } from '../../lib/params/read-values.ts';
import { boardFeetNominal } from '../../lib/units/board-feet.ts';
import { drawnProblem } from './cut-plan/drawn-problem.ts';

const INCH = 25.4;
const SAW: YardSaw = { kerf: INCH / 8, widest: 8 * INCH, narrowest: 2 * INCH };

/** Boards that are all alike and clear: 8 in by 100 in of 8/4. */
const ALIKE: YardPile = {
  thickness: 2 * INCH,
  width: [8 * INCH, 8 * INCH],
  length: [100 * INCH, 100 * INCH],
  clear: 1,
};
/** Of boards all alike every visit is the same. */
const FEW = 3;
/** Board feet of one of them: 2 x 8 x 100 / 144. */
const FEET = 1600 / 144;

const inches = (pieces: number, width: number, length: number): PieceNeed => ({
  pieces,
  width: width * INCH,
  length: length * INCH,
});

const boards = (count: number) => {
  const feet = expect.closeTo(count * FEET, 9);
  return { in50: feet, in80: feet, in95: feet };
};

/** 3/16 in off each strip, 86 in long. */
const cover = (width: number) => ({ width: width * INCH, length: 86 * INCH, lost: (3 / 16) * INCH });

const netFeet = ({ pile, cover: strips, parts }: ClassWanted): number =>
  [...parts, ...(strips ? [{ ...strips, pieces: 1 }] : [])].reduce(
    (all, { pieces, width, length }) => all + pieces * boardFeetNominal(pile.thickness, width, length),
    0,
  );

describe('of clear boards all alike, as many as a count by hand gives', () => {
  const parts = (...needs: PieceNeed[]) => yardVisits([{ pile: ALIKE, parts: needs }], SAW, FEW).all;
  const strips = (width: number, needs: PieceNeed[] = [], saw = SAW) =>
    yardVisits([{ pile: ALIKE, cover: cover(width), parts: needs }], saw, FEW).all;

  test('parts', () => {
    // 7 lanes of 1 in and 6 kerfs of 1/8 in fill 7 3/4 of 8 in; 89 pieces of 1 in and 88 kerfs fill the 100 in.
    expect(parts(inches(7 * 89, 1, 1))).toEqual(boards(1));
    expect(parts(inches(7 * 89 + 1, 1, 1))).toEqual(boards(2));
    // Two of 49 in end to end, and one lane of 5 in a board: three boards for five.
    expect(parts(inches(5, 5, 49))).toEqual(boards(3));
    // A lane of 5 in beside one of 2 7/8 in fills the width to the last kerf.
    expect(parts(inches(2, 5, 49), inches(2, 2.875, 49))).toEqual(boards(1));
    expect(parts(inches(2, 5, 49), inches(2, 2.9, 49))).toEqual(boards(2));
  });

  test('strips cover 8 in less 3/16 in each', () => {
    expect(strips(7.8125)).toEqual(boards(1));
    expect(strips(7.82)).toEqual(boards(2));
    expect(strips(5 * 7.8125)).toEqual(boards(5));
    // Ripped in two for a jointer of 5 in: 2 x (7 7/8 in / 2 - 3/16 in).
    const narrow = { ...SAW, widest: 5 * INCH };
    expect(strips(7.5, [], narrow)).toEqual(boards(1));
    expect(strips(7.51, [], narrow)).toEqual(boards(2));
  });

  test('parts come out of what the strips leave: 13 7/8 in at the end, and what is ripped off', () => {
    expect(strips(7, [inches(1, 8, 13.875)])).toEqual(boards(1));
    expect(strips(7, [inches(1, 8, 13.9)])).toEqual(boards(2));
    // 7 13/16 in less 4 in and a kerf: 3 11/16 in beside the strip.
    expect(strips(4, [inches(1, 3.6875, 86)])).toEqual(boards(1));
    expect(strips(4, [inches(1, 3.7, 86)])).toEqual(boards(2));
  });

  test('a thicker class hands on what it leaves, a thinner one does not', () => {
    const thick: YardPile = { ...ALIKE, thickness: 3 * INCH };
    const both = (needs: Omit<ClassWanted, 'pile'>, more: Omit<ClassWanted, 'pile'>) =>
      yardVisits(
        [
          { pile: thick, ...needs },
          { pile: ALIKE, ...more },
        ],
        SAW,
      ).classes.map((enough) => enough!.in50);
    const [one, none] = [1.5 * FEET, 0].map((feet) => expect.closeTo(feet, 9));
    // The strip lies on by 3 11/16 in; the end is 13 7/8 in long.
    expect(both({ cover: cover(4), parts: [] }, { cover: cover(3.6875), parts: [] })).toEqual([one, none]);
    expect(both({ cover: cover(4), parts: [] }, { cover: cover(3.7), parts: [] })).toEqual([
      one,
      expect.closeTo(FEET, 9),
    ]);
    expect(both({ cover: cover(7), parts: [] }, { parts: [inches(2, 3.9, 13)] })).toEqual([one, none]);
    expect(both({ parts: [inches(2, 3.9, 13)] }, { cover: cover(7), parts: [] })[0]).toEqual(one);
  });
});

describe('of boards as they come', () => {
  const need = fc.record({
    pieces: fc.integer({ min: 1, max: 6 }),
    width: fc.integer({ min: 40, max: 150 }),
    length: fc.integer({ min: 300, max: 1500 }),
  });
  const parts = fc.array(need, { minLength: 1, maxLength: 4 });
  const strips = fc.option(
    fc.record({
      width: fc.integer({ min: 100, max: 900 }),
      length: fc.integer({ min: 500, max: 2200 }),
      lost: fc.constant(5),
    }),
    { nil: undefined },
  );
  const piles = [pileOf('fas', 3 * INCH), pileOf('fas', 2 * INCH)];

  test('never under the net, counted from the thickest class down, and sure costs more than likely', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(parts, strips), { minLength: 1, maxLength: 2 }), (drawn) => {
        const wanted = drawn.map(
          ([own, width], c): ClassWanted => ({ pile: piles[c]!, parts: own, ...(width ? { cover: width } : {}) }),
        );
        const { classes, all } = yardVisits(wanted, SAW, 30);
        expect(classes[0]!.in50).toBeGreaterThanOrEqual(netFeet(wanted[0]!) - 1e-9);
        expect(all!.in50).toBeGreaterThanOrEqual(wanted.reduce((sum, one) => sum + netFeet(one), 0) - 1e-9);
        for (const { in50, in80, in95 } of [...classes.map((one) => one!), all!]) {
          expect(in80).toBeGreaterThanOrEqual(in50);
          expect(in95).toBeGreaterThanOrEqual(in80);
        }
      }),
      { seed: 3, numRuns: 40 },
    );
  });

  test('the same boards without their flaws are enough sooner', () => {
    for (const [n, length] of [700, 900, 1100, 1300].entries()) {
      const own = [{ pieces: 8 + n, width: 70, length }];
      const ask = (clear: number) =>
        yardVisits([{ pile: { ...piles[0]!, clear }, cover: { width: 400, length: 2000, lost: 5 }, parts: own }], SAW)
          .all!;
      expect(ask(1).in50).toBeLessThanOrEqual(ask(0.9).in50);
      expect(ask(0.9).in50).toBeLessThanOrEqual(ask(0.7).in50);
    }
  });

  // Source: the bound that the cut plan proves for the very boards that were looked at.
  test('a visit needs no less than the bound of the cut plan, and not half as much again', async () => {
    const solver = await loadSolver();
    const shares = [1, 2, 3, 4].map((seed) => {
      const { parts: sizes } = drawnProblem(40, 10, seed);
      const draw = boardsOf({ ...piles[1]!, clear: 1 }, seeded(seed));
      const seen: DrawnBoard[] = [];
      const watched = (n: number): DrawnBoard => {
        seen[n] = draw(n);
        return seen[n];
      };
      const own = sizes.map(({ count, width, length }) => ({ pieces: count, width, length }));
      const way = { first: 'rip', by: ({ width }: { width: number }) => width } as const;
      const [feet] = visitOnce([{ pile: piles[1]!, parts: own }], { ...SAW, kerf: 3 }, way, [watched]);
      const lumber = seen.map(({ width, length, boardFeet }, n) => {
        return { id: `B${n}`, width, length, cost: boardFeet, avoid: [] };
      });
      const { bound } = cutPlanOf({ parts: sizes, boards: lumber, kerf: 3 }, solver, 8);
      expect(feet).toBeGreaterThanOrEqual(bound - 1e-6);
      return feet! / bound;
    });
    // One way of cutting, boards as they came; the bound knows all boards beforehand, those left at the yard among them.
    expect(Math.max(...shares)).toBeLessThan(1.45);
  }, 20_000);

  // Source: a trial of the same kind with another plan: of 107 board feet net in 100 parts, 128 and 132 were enough in 50
  // and 90 of 100 deliveries of clear boards, 1.20 and 1.23 times the net.
  test('a job of 100 parts takes a fifth more than its net of clear boards, and what 70 % yield says of the best grade', () => {
    const sizes = drawnProblem(100, 22, 1).parts.map(({ count, width, length }) => ({ pieces: count, width, length }));
    const ask = (pile: YardPile) => {
      const wanted: ClassWanted = { pile, parts: sizes };
      const { in50, in95 } = yardVisits([wanted], SAW).all!;
      return [in50 / netFeet(wanted), in95 / netFeet(wanted)];
    };
    const clear = ask({ thickness: INCH, width: [110, 280], length: [1800, 3600], clear: 1 });
    expect(clear).toEqual([expect.closeTo(1.2, 1), expect.closeTo(1.23, 1)]);
    const [graded] = ask(pileOf('fas', INCH));
    expect(graded! / (100 / 70)).toBeGreaterThan(0.9);
    expect(graded! / (100 / 70)).toBeLessThan(1.1);
  });

  test('what no board can give is said, and the same question has the same answer', () => {
    const ask = (...needs: PieceNeed[]) => yardVisits([{ pile: piles[1]!, parts: needs }], SAW);
    expect(ask(inches(1, 20, 50))).toEqual({ classes: [undefined] });
    const wide = { pile: piles[1]!, cover: { width: 500, length: 4000, lost: 5 }, parts: [] };
    expect(yardVisits([wide], SAW, 5)).toEqual({ classes: [undefined] });
    expect(ask(inches(4, 5.1875, 86))).toEqual(ask(inches(4, 5.1875, 86)));
  });
});

describe('the reading table', () => {
  const job = makeJob(design, readValues(design.params, design.values).values!, shop);
  const { total, classes } = buyingList(job.nominal, job.cutList, shop);

  // Source: the rules of thumb, 70 % yield (107 board feet) and 30 % added (97); a small job in whole thick boards is dearer.
  test('needs more than the rules of thumb say, since boards come whole, but not half as much again', () => {
    const { in50, in80 } = total.enough!;
    expect(in50).toBeGreaterThan(total.toBuyByYield);
    expect(in80).toBeLessThan(1.4 * total.toBuyByYield);
    for (const { enough, boardFeet } of classes) expect(enough!.in80).toBeLessThan(2.5 * boardFeet);
  });
});
