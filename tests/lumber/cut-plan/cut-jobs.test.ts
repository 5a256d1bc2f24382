import { describe, expect, it } from 'vitest';
import type { CutList, CutListRow } from '../../../lib/derive/cut-list/cut-list.ts';
import { cutJobs } from '../../../lib/derive/lumber/cut-plan/cut-jobs.ts';
import type { Board } from '../../../lib/model/records.ts';
import type { ThicknessClassId } from '../../../lib/wood/thickness-classes.ts';

const row = (lumber: ThicknessClassId, thickness: number, marks: string[], size = [600, 80]): CutListRow => ({
  marks,
  name: 'rail',
  kind: 'rail' as CutListRow['kind'],
  quantity: marks.length,
  finished: { thickness, width: size[1]!, length: size[0]! },
  rough: { thickness, width: size[1]!, length: size[0]! },
  wood: 'cherry' as CutListRow['wood'],
  lumber,
  boardFeet: 0,
  boardFeetRough: 0,
  notes: [],
});

const list = (...rows: CutListRow[]): CutList => ({ rows, pieces: 0, boardFeet: 0, boardFeetRough: 0 });

const board = (mark: string, thickness: number, more: Partial<Board> = {}): Board => ({
  row: Number(mark),
  mark,
  thickness,
  width: 180,
  length: 2000,
  defects: [],
  ...more,
});

const options = { kerf: 3 };
const told = (made: ReturnType<typeof cutJobs>) =>
  made.map(({ lumber, problem }) => ({
    lumber,
    parts: problem.parts.map((p) => p.id),
    boards: problem.boards.map((b) => b.id),
  }));

describe('which boards serve which parts', () => {
  it('a board serves the thickest class it can; one too thin for all, or spoken for, serves none', () => {
    const boards = [board('1', 72), board('2', 46), board('3', 20), board('4', 75)];
    expect(
      told(cutJobs(list(row('8/4', 44, ['A']), row('12/4', 70, ['B'])), boards, { ...options, spoken: ['4'] })),
    ).toEqual([
      { lumber: '12/4', parts: ['B'], boards: ['1'] },
      { lumber: '8/4', parts: ['A'], boards: ['2'] },
    ]);
  });

  it('a class without boards is cut with the next thicker one', () => {
    const boards = [board('1', 72), board('2', 73)];
    expect(told(cutJobs(list(row('10/4', 58, ['A']), row('12/4', 70, ['B'])), boards, options))).toEqual([
      { lumber: '12/4', parts: ['B', 'A'], boards: ['1', '2'] },
    ]);
  });

  it('a class short of wood borrows the thinnest board that the thicker one can spare, and no more than it needs', () => {
    const small = { length: 700, width: 90 };
    const boards = [board('1', 76), board('2', 71), board('3', 72), board('4', 60, small)];
    const rows = list(row('10/4', 58, ['A', 'B', 'C']), row('12/4', 70, ['D']));
    expect(told(cutJobs(rows, boards, options))).toEqual([
      { lumber: '12/4', parts: ['D'], boards: ['1', '3'] },
      { lumber: '10/4', parts: ['A', 'B', 'C'], boards: ['4', '2'] },
    ]);
  });

  it('nothing is lent that the thick parts need', () => {
    const boards = [board('1', 72, { length: 900, width: 100 }), board('2', 60, { length: 300 })];
    const rows = list(row('10/4', 58, ['A']), row('12/4', 70, ['D']));
    expect(told(cutJobs(rows, boards, options))).toEqual([
      { lumber: '12/4', parts: ['D'], boards: ['1'] },
      { lumber: '10/4', parts: ['A'], boards: ['2'] },
    ]);
  });

  it('a long part gets a board that is long enough', () => {
    const boards = [board('1', 72), board('2', 74, { length: 1000 }), board('3', 60, { length: 1000 })];
    const rows = list(row('10/4', 58, ['A'], [1500, 80]), row('12/4', 70, ['D']));
    expect(told(cutJobs(rows, boards, options))[1]).toEqual({ lumber: '10/4', parts: ['A'], boards: ['3', '1'] });
  });

  it('boards cost their price when all have one, else their board feet; matching parts carry their word', () => {
    const boards = [board('1', 25.4, { price: 30 }), board('2', 25.4, { price: 40 })];
    const rows = list(row('4/4', 20, ['A', 'B']));
    const [job] = cutJobs(rows, boards, { ...options, together: () => 'pair' });
    expect([job!.costIn, ...job!.problem.boards.map((b) => b.cost)]).toEqual(['money', 30, 40]);
    expect(job!.problem.parts.map((p) => p.together)).toEqual(['pair', 'pair']);
    const [other] = cutJobs(rows, [boards[0]!, board('3', 25.4, { length: 304.8 * 6, width: 152.4 })], options);
    // A board foot is a square foot an inch thick: 6 ft x 6 in x 1 in is 3.
    expect([other!.costIn, other!.problem.boards[1]!.cost]).toEqual(['board feet', expect.closeTo(3, 9)]);
  });
});
