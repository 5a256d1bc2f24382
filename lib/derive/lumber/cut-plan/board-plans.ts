import type { BoardPlan, CutPlan, Offcut, PlacedPart } from './cut-plan.ts';
import type { CutProblem } from './cut-problem.ts';
import { KEPT_OFFCUT } from './cut-problem.ts';
import type { Grid } from './grid.ts';
import { costOf, type Pattern, yieldOf } from './pattern.ts';
import { type Piece, sawCuts } from './saw-cuts.ts';

/** Patterns as a plan in mm, with the ids of the caller: boards by id, ids of parts of one size handed out in order. */
export function cutPlan(problem: CutProblem, grid: Grid, patterns: readonly Pattern[]): CutPlan {
  const boards = namedBoards(grid, patterns);
  const hand = partIds(grid);
  const plans = boards.map(({ id, pattern }) => boardPlan(problem, grid, id, pattern, hand));
  const parts = grid.parts.reduce((sum, p) => sum + p.area * p.count, 0);
  const opened = patterns.reduce((sum, p) => sum + grid.boards[p.board]!.area, 0);
  return {
    boards: plans,
    kerf: grid.kerf * grid.step,
    cost: costOf(grid, patterns) * grid.unit,
    yield: opened > 0 ? parts / opened : 0,
  };
}

/** Gives every pattern one of the boards of its kind, then puts them into the order of the caller's list of ids. */
function namedBoards({ boards }: Grid, patterns: readonly Pattern[]): { id: string; pattern: Pattern }[] {
  const next = boards.map(() => 0);
  const named = [...patterns]
    .sort((a, b) => a.board - b.board || (a.counts.join() < b.counts.join() ? -1 : 1))
    .map((pattern) => ({ id: boards[pattern.board]!.ids[next[pattern.board]!++]!, pattern }));
  return named.sort((a, b) => compareIds(a.id, b.id));
}

/** B2 before B10. */
function compareIds(a: string, b: string): number {
  const [, aWord = '', aNumber = ''] = /^(.*?)(\d*)$/.exec(a) ?? [];
  const [, bWord = '', bNumber = ''] = /^(.*?)(\d*)$/.exec(b) ?? [];
  if (aWord !== bWord) return aWord < bWord ? -1 : 1;
  return Number(aNumber) - Number(bNumber) || (a < b ? -1 : a > b ? 1 : 0);
}

/** The next id for a part of this size. */
function partIds({ parts }: Grid): (part: number) => string {
  const ids = parts.map((p) => p.members.flatMap(({ id, count }) => Array.from({ length: count }, () => id)));
  const next = parts.map(() => 0);
  return (part) => {
    const id = ids[part]![next[part]!++];
    if (id === undefined) throw new RangeError(`part ${part} is cut more often than demanded`);
    return id;
  };
}

function boardPlan(
  { keep = KEPT_OFFCUT }: CutProblem,
  grid: Grid,
  id: string,
  pattern: Pattern,
  hand: (part: number) => string,
): BoardPlan {
  const { step } = grid;
  const placed = [...pattern.spots]
    .sort((a, b) => a.x - b.x || a.y - b.y)
    .map(({ part, x, y }): PlacedPart => {
      const { length, width } = grid.parts[part]!;
      return { part: hand(part), x: x * step, y: y * step, length: length * step, width: width * step };
    });
  const { cuts, rests } = sawCuts(grid, pattern);
  const clear = rests.filter((piece) => isClear(grid, pattern.board, piece));
  const offcuts = clear
    .map(({ x0, x1, y0, y1 }) => ({ x: x0 * step, y: y0 * step, length: (x1 - x0) * step, width: (y1 - y0) * step }))
    .filter(({ length, width }) => length >= keep.length && width >= keep.width)
    .sort((a, b) => a.x - b.x || a.y - b.y)
    .map((place, n): Offcut => ({ name: `${id}-${n + 1}`, ...place }));
  return {
    board: id,
    first: pattern.first,
    placed,
    cuts: cuts.map((cut) => ({ ...cut, at: cut.at * step, stop: cut.stop * step })),
    offcuts,
    yield: yieldOf(grid, pattern),
  };
}

const isClear = ({ boards }: Grid, board: number, p: Piece): boolean =>
  !boards[board]!.zones.some((z) => z.x0 < p.x1 && p.x0 < z.x1 && z.y0 < p.y1 && p.y0 < z.y1);
