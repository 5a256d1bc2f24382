import type { Board } from '../../../model/records.ts';
import type { Mm } from '../../../units/mm.ts';
import type { ThicknessClassId } from '../../../wood/thickness-classes.ts';
import type { CutListRow } from '../../cut-list/cut-list.ts';

/** What is cut from one pile of boards. */
export interface Share {
  readonly lumber: ThicknessClassId;
  readonly rows: readonly CutListRow[];
  readonly boards: readonly Board[];
}

/** mm: thicknesses that differ by no more are the same (our convention). */
const SAME = 1e-6;

/** Board area over part area that a class should have before it lends: two thirds end in parts (common practice, no source). */
const PLENTY = 1.5;

/**
 * Boards for each thickness class of rows, thickest class first. A board stands with the thickest class whose thickest part
 * it can give; one too thin for all stands nowhere. A class without boards is cut from those of the next thicker class, in
 * one plan with it; one that is short of wood borrows the thinnest boards that thicker classes can spare.
 */
export function shareBoards(
  rows: readonly CutListRow[],
  classes: readonly ThicknessClassId[],
  boards: readonly Board[],
): Share[] {
  const need = classes.map((id) => thickest(rows.filter((r) => r.lumber === id)));
  const shares = classes.map(
    (lumber, n): Share => ({
      lumber,
      rows: rows.filter((r) => r.lumber === lumber),
      boards: boards.filter((b) => need.findIndex((least) => b.thickness >= least - SAME) === n),
    }),
  );
  const joined: Share[] = [];
  for (const share of shares) {
    const before = joined.at(-1);
    if (before && share.boards.length === 0) {
      joined[joined.length - 1] = { ...before, rows: [...before.rows, ...share.rows] };
    } else joined.push(share);
  }
  return lent(joined);
}

const thickest = (rows: readonly CutListRow[]): Mm => Math.max(...rows.map((r) => r.rough.thickness));

/** Boards passed down from thick to thin. */
function lent(shares: readonly Share[]): Share[] {
  const now = [...shares];
  for (let n = 1; n < now.length; n++) {
    for (let found = nextLoan(now, n); found; found = nextLoan(now, n)) {
      const { lender, board } = found;
      now[lender] = { ...now[lender]!, boards: now[lender]!.boards.filter((b) => b !== board) };
      now[n] = { ...now[n]!, boards: [...now[n]!.boards, board] };
    }
  }
  return now;
}

/** The thinnest board that would help a class in want, and a thicker class that can do without it. */
function nextLoan(shares: readonly Share[], borrower: number): { lender: number; board: Board } | undefined {
  const { rows, boards } = shares[borrower]!;
  const homeless = rows.filter((row) => !boards.some((b) => fits(row, b)));
  if (homeless.length === 0 && hasPlenty(rows, boards)) return undefined;
  const helped = homeless.length > 0 ? homeless : rows;
  const offers = shares
    .slice(0, borrower)
    .flatMap((share, lender) =>
      share.boards
        .filter((board) => helped.some((row) => fits(row, board)) && canSpare(share, board))
        .map((board) => ({ lender, board })),
    );
  return offers.sort((a, b) => a.board.thickness - b.board.thickness || a.board.row - b.board.row)[0];
}

function canSpare({ rows, boards }: Share, board: Board): boolean {
  const rest = boards.filter((b) => b !== board);
  return hasPlenty(rows, rest) && rows.every((row) => rest.some((b) => fits(row, b)));
}

const fits = ({ rough }: CutListRow, { length, width }: Board): boolean =>
  rough.length <= length + SAME && rough.width <= width + SAME;

function hasPlenty(rows: readonly CutListRow[], boards: readonly Board[]): boolean {
  const wanted = rows.reduce((sum, { rough, quantity }) => sum + rough.length * rough.width * quantity, 0);
  return boards.reduce((sum, { length, width }) => sum + length * width, 0) >= PLENTY * wanted;
}
