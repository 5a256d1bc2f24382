import type { CutKind } from './cut-plan.ts';
import { fewLanes } from './few-lanes.ts';
import type { Grid } from './grid.ts';
import type { Pattern } from './pattern.ts';

/** More pieces are too many for trying every way to deal them out. */
export const FEW_ENOUGH = 10;

/** All pieces of the grid, by the number of their part, counted out. */
const piecesOf = ({ parts }: Grid): number[] => parts.flatMap(({ count }, i) => Array.from({ length: count }, () => i));

/**
 * Patterns for these boards (kinds of the grid) that hold all pieces, zones and groups kept; undefined proves that there are
 * none. Sets of pieces are bits of a mask: each board is offered every set that is left, the last one the rest.
 */
export function packFew(grid: Grid, kinds: readonly number[]): readonly Pattern[] | undefined {
  const pieces = piecesOf(grid);
  if (pieces.length > FEW_ENOUGH) throw new RangeError(`${pieces.length} pieces; ${FEW_ENOUGH} are few`);
  const patternOf = patternFinder(grid, pieces);
  const groups = groupMasks(grid, pieces);
  const isWhole = (mask: number): boolean => groups.every((g) => (mask & g) === 0 || (mask & g) === g);
  const deal = (n: number, rest: number): readonly Pattern[] | undefined => {
    if (rest === 0) return [];
    if (n >= kinds.length) return undefined;
    const sets = n === kinds.length - 1 ? [rest] : setsWithin(rest);
    for (const mask of sets) {
      const pattern = isWhole(mask) ? patternOf(kinds[n]!, mask) : undefined;
      const others = pattern && deal(n + 1, rest & ~mask);
      if (others) return [pattern, ...others];
    }
    return deal(n + 1, rest);
  };
  return deal(0, 2 ** pieces.length - 1);
}

/** The sets of some or all of these pieces, counted down. */
function* setsWithin(all: number): Generator<number> {
  for (let mask = all; mask > 0; mask = (mask - 1) & all) yield mask;
}

/** The pieces of each group as a mask. */
function groupMasks({ parts, groups }: Grid, pieces: readonly number[]): number[] {
  return Array.from({ length: groups }, (_, g) =>
    pieces.reduce((mask, part, k) => (parts[part]!.group === g ? mask | (1 << k) : mask), 0),
  );
}

/** The pattern of a board that holds a set of pieces, either direction; each question is answered once. */
function patternFinder(grid: Grid, pieces: readonly number[]) {
  const known = new Map<string, Pattern | undefined>();
  const firsts: readonly CutKind[] = grid.first ? [grid.first] : ['rip', 'crosscut'];
  return (board: number, mask: number): Pattern | undefined => {
    const key = `${board}:${mask}`;
    if (known.has(key)) return known.get(key);
    const own = pieces.filter((_, k) => (mask >> k) & 1);
    const area = own.reduce((sum, part) => sum + grid.parts[part]!.area, 0);
    let found: Pattern | undefined;
    if (area <= grid.boards[board]!.area) {
      for (const first of firsts) found ??= fewLanes(grid, board, first, own);
    }
    known.set(key, found);
    return found;
  };
}
