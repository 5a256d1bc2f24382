import type { Board } from '../../model/records.ts';
import { THICKNESS_CLASSES, type ThicknessClass, type ThicknessClassId } from '../../wood/thickness-classes.ts';
import { type CutList, type CutListRow, STOCKED } from '../cut-list/cut-list.ts';

/** A board counts for a class when it is as thick as that class dresses to, or this near to it, mm (our convention). */
const NEAR = 1.6;

/** The thickest class that a board as measured may count for. */
function classOfBoard({ thickness }: Board): ThicknessClass | undefined {
  return STOCKED.findLast(({ dressed }) => dressed.value <= thickness + NEAR);
}

/**
 * The cut list with every row moved to the thinnest class that serves it and of which there are free boards: without 10/4 at
 * hand, what wants 10/4 comes out of 12/4.
 */
export function ofClassesAtHand(list: CutList, boards: readonly Board[], spoken: readonly string[]): CutList {
  const free = boards.filter(({ mark }) => !spoken.includes(mark));
  const atHand = new Set(free.map((board) => classOfBoard(board)?.id));
  const classes = THICKNESS_CLASSES.filter(({ id }) => atHand.has(id));
  return { ...list, rows: list.rows.map((row) => ({ ...row, ...lumberOf(row, classes) })) };
}

function lumberOf({ lumber }: CutListRow, classes: readonly ThicknessClass[]): { readonly lumber?: ThicknessClassId } {
  const wanted = THICKNESS_CLASSES.find(({ id }) => id === lumber);
  if (!wanted) return {};
  const found = classes.find(({ nominal }) => nominal >= wanted.nominal);
  return { lumber: (found ?? wanted).id };
}
