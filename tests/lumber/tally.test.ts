import { describe, expect, test } from 'vitest';
import type { BuyingList } from '../../lib/derive/lumber/buying-list.ts';
import type { BuyingRow } from '../../lib/derive/lumber/buying-row.ts';
import { tallyOf } from '../../lib/derive/lumber/tally.ts';
import type { Board } from '../../lib/model/records.ts';

const INCH = 25.4;
const KERF = INCH / 8;

const board = (mark: string, thickness: number, width: number, length: number): Board => ({
  row: 1,
  mark,
  thickness: thickness * INCH,
  width: width * INCH,
  length: length * INCH,
  defects: [],
});

const need = (pieces: number, thickness: number, width: number, length: number): BuyingRow =>
  ({
    marks: ['P1'],
    name: 'part',
    isStrip: false,
    wood: 'cherry',
    pieces,
    thickness: thickness * INCH,
    width: width * INCH,
    length: length * INCH,
    finishedWidth: width * INCH,
    boardFeet: 0,
  }) as BuyingRow;

const tally = (rows: readonly BuyingRow[], boards: readonly Board[]) =>
  tallyOf({ rows, spares: { count: 0 } } as unknown as BuyingList, boards, KERF);

// Counted by hand: a board foot is 144 cubic inches.
describe('room for other parts', () => {
  test('two sizes share a board, with a kerf between them', () => {
    // Two of 3 in and one of 2 3/4 in and two kerfs across 9 in; each 24 x 1.75 in thick.
    const rows = [need(2, 1.75, 3, 24), need(1, 1.75, 2.75, 24)];
    const { rest, verdict, by } = tally(rows, [board('1', 1.75, 9, 24)]);
    expect(rest.left).toBeCloseTo((2 * 3 * 24 * 1.75 + 2.75 * 24 * 1.75) / 144, 6);
    expect([verdict, by]).toEqual(['stop', 'sizes']);
    expect(tally(rows, [board('1', 1.75, 8.99, 24)]).verdict).toBe('go on');
  });

  test('across first where only that frees them all', () => {
    // Behind 20 in and a kerf, 9 7/8 in of the whole 8 in are left; ripped first, no more than 5 in wide.
    const rows = [need(1, 1.75, 5, 20), need(1, 1.75, 8, 9.875)];
    expect(tally(rows, [board('1', 1.75, 8, 30)]).verdict).toBe('stop');
    expect(tally(rows, [board('1', 1.75, 8, 29.9)]).verdict).toBe('go on');
  });

  test('the thickest first, each from the thinnest board that is thick enough', () => {
    const rows = [need(1, 1.25, 4, 20), need(1, 2.5, 4, 20)];
    expect(tally(rows, [board('1', 2.5, 4, 20), board('2', 1.25, 4, 20)]).verdict).toBe('stop');
    expect(tally(rows, [board('2', 1.25, 4, 20), board('3', 1.25, 4, 20)]).verdict).toBe('go on');
    // Of one board the thick part comes, not the thin one.
    expect(tally(rows, [board('1', 2.5, 4, 20)]).rest.left).toBeCloseTo((2.5 * 4 * 20) / 144, 6);
  });
});
