import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { blanksWords } from '../../lib/build/blanks-words.ts';
import { lumberPlan } from '../../lib/build/lumber-plan.ts';
import { noWood } from '../../lib/build/no-wood.ts';
import type { BlanksWanted } from '../../lib/derive/lumber/blanks-wanted.ts';
import { boardsThatDo } from '../../lib/derive/lumber/boards-that-do.ts';
import { cutPlanOf } from '../../lib/derive/lumber/cut-plan/plan-cuts.ts';
import { loadSolver } from '../../lib/derive/lumber/master.ts';
import { pileOf } from '../../lib/derive/lumber/yard-pile.ts';
import { THICKNESS_CLASSES } from '../../lib/wood/thickness-classes.ts';
import { pileWithout } from './pile-without.ts';
import { readingWithBoards } from './reading-boards.ts';

const INCH = 25.4;
/** Free of floating-point noise. */
const inches = (mm: number): number => Number((mm / INCH).toFixed(9));
const WORK = { strips: 100_000, cuts: 40 };
const solver = await loadSolver();

describe('boards that blanks come out of', () => {
  const pile = { width: [6 * INCH, 10 * INCH], length: [96 * INCH, 144 * INCH] } as const;
  const told = (pieces: number, width: number, length: number, together = false) =>
    boardsThatDo({ pieces, width: width * INCH, length: length * INCH, together }, INCH / 8, pile).map((board) => [
      board.count,
      inches(board.width),
      inches(board.length),
      ...(board.beyond ? ['beyond'] : []),
    ]);

  test('counted by hand, a kerf of 1/8 in between', () => {
    expect(told(4, 3.4375, 23.625)).toEqual([
      [1, 3.4375, 94.875],
      [1, 7, 47.375],
    ]);
    // Four in a row are 160 3/8 in long, two lanes 7 in wide: two boards, or one of two and two.
    expect(told(4, 3.4375, 40)).toEqual([
      [1, 7, 80.125],
      [2, 3.4375, 80.125],
    ]);
    expect(told(3, 6, 100)).toEqual([[3, 6, 100]]);
    expect(told(1, 5, 20)).toEqual([[1, 5, 20]]);
  });

  test('all from one board where they go together, and larger than boards come where they must be', () => {
    expect(told(2, 6, 100, true)).toEqual([[1, 6, 200.125, 'beyond']]);
    expect(told(2, 6, 200)).toEqual([[2, 6, 200, 'beyond']]);
  });

  test('give a plan, and boards a step shorter do not', () => {
    const size = fc.record({
      pieces: fc.integer({ min: 1, max: 8 }),
      width: fc.integer({ min: 40, max: 240 }),
      length: fc.integer({ min: 200, max: 3500 }),
    });
    fc.assert(
      fc.property(size, ({ pieces, width, length }) => {
        const parts = [{ id: 'P', count: pieces, width, length }];
        for (const board of boardsThatDo({ pieces, width, length, together: false }, 3, pile)) {
          const state = (shorter: number) => {
            const own = { id: 'B', ...board, length: board.length - shorter, cost: 1, avoid: [] };
            return cutPlanOf({ parts, boards: [own], kerf: 3 }, solver, 40).plan;
          };
          expect(state(0)).toBeDefined();
          expect(state(1)).toBeUndefined();
          if (!board.beyond) expect(board.width <= pile.width[1] && board.length <= pile.length[1]).toBe(true);
        }
      }),
      { seed: 5, numRuns: 40 },
    );
  });
});

describe('what to buy for parts that are left over', () => {
  const classOf = (id: string) => THICKNESS_CLASSES.find((one) => one.id === id)!;
  /** Boards as they are asked for, dressed. */
  const bought = (wanted: readonly BlanksWanted[], choice: number): string[] =>
    wanted.flatMap(({ lumber, boards }, k) => {
      const { count, width, length } = boards[Math.min(choice, boards.length - 1)]!;
      const { dressed } = classOf(lumber!);
      const size = [dressed.value, width, length].map((mm) => `${mm} mm`).join();
      return Array.from({ length: count }, (_, n) => `N${k}-${n + 1},${size},8 %,A,0.5,,100`);
    });

  test.each([[['4', '12', '16', '18', '19']], [['4', '12', '13', '16', '18', '19', '3', '20', '17', '9']]])(
    'is enough: the demo pile without %o',
    async (gone) => {
      const plan = await lumberPlan(readingWithBoards(pileWithout(gone)), WORK);
      expect(plan.wanted.length).toBeGreaterThan(0);
      const lacks = noWood(plan).parts;
      expect(plan.wanted.flatMap(({ marks }) => marks).toSorted()).toEqual(lacks.toSorted());
      for (const choice of [0, 1]) {
        const next = await lumberPlan(readingWithBoards(pileWithout(gone, bought(plan.wanted, choice))), WORK);
        expect(noWood(next)).toEqual({ top: false, parts: [] });
      }
      // As the buying list says it, and no longer than boards of the grade come.
      for (const { marks, lumber, boards } of plan.wanted) {
        expect(plan.buying.rows.find((row) => row.marks.includes(marks[0]!))!.lumber).toBe(lumber);
        const { length } = pileOf('fas', classOf(lumber!).nominal);
        for (const board of boards) expect(board.length).toBeLessThanOrEqual(length[1]);
      }
    },
    20_000,
  );

  test('is said size by size', () => {
    const one = {
      marks: ['P1', 'P2', 'P3', 'P4'],
      lumber: '12/4',
      pieces: 4,
      width: 87.3125,
      length: 600.075,
    } as const;
    const boards = [
      { count: 1, width: 177.8, length: 1203.325 },
      { count: 2, width: 87.3125, length: 1203.325 },
    ];
    expect(blanksWords([{ ...one, boards }], 'in')).toEqual([
      'for P1 to P4: 4 clear blanks 3 7/16 in x 23 5/8 in of 12/4; one board 7 in x 47 3/8 in, or 2 boards 3 7/16 in x 47 3/8 in, clear, would do',
    ]);
    expect(blanksWords([{ ...one, boards: [{ ...boards[0]!, beyond: true }] }], 'mm')[0]).toMatch(
      /one board 177\.8 mm x 1203\.4 mm, clear, would do, larger than boards of the grade come$/,
    );
  });
});
