import type { Grid } from './grid.ts';
import { type Pattern, take } from './pattern.ts';
import { placeGroups } from './place-groups.ts';
import { withinDemand } from './within-demand.ts';
import type { Work } from './work.ts';

/** What is to be cut from what. */
export interface FillTask {
  /** Pieces of each part. */
  readonly demand: readonly number[];
  /** Boards of each kind that may be opened. */
  readonly free: readonly number[];
  /** Values of the parts to start from. */
  readonly values: Float64Array;
  /** 0 fills by the values as they are; 1 shakes them by half. */
  readonly noise: number;
  /** Only plans below this scaled cost are wanted. */
  readonly below: number;
}

/** Boards looked at in both directions: the best ranked, more of them when the rest may fit into one board. */
const BOTH_WAYS = 3;
const BOTH_WAYS_LAST = 12;

/** A board ranked this much below the best found is not cut for a look. */
const WORTH_A_LOOK = 0.97;

/** Share of the noise that the choice of the board gets. */
const BOARD_NOISE = 0.3;

/**
 * Opens board after board, each time the one whose best pattern brings most value for its cost under shaken values; a
 * board that takes all that is left ends it. Undefined when the parts do not fit or the plan would not be below the limit.
 */
export function fill(work: Work, task: FillTask): readonly Pattern[] | undefined {
  const { grid } = work;
  const left = [...task.demand];
  const free = [...task.free];
  const plan: Pattern[] = [];
  let cost = 0;
  let rest = left.reduce((sum, n, i) => sum + n * grid.parts[i]!.area, 0);
  const open = (pattern: Pattern): void => {
    plan.push(pattern);
    free[pattern.board]!--;
    cost += grid.boards[pattern.board]!.cost;
    pattern.counts.forEach((n, i) => {
      left[i]! -= n;
      rest -= n * grid.parts[i]!.area;
    });
  };
  if (grid.groups > 0 && !placeGroups(work, task, left, free, open)) return undefined;
  const cheapest = cheapestArea(grid);
  while (rest > 0) {
    if (cost + rest * cheapest >= task.below) return undefined;
    const next = nextBoard(work, task, left, free, rest);
    if (!next) return undefined;
    open(next);
  }
  return cost < task.below ? plan : undefined;
}

/** Least cost of a unit of area. */
export const cheapestArea = ({ boards }: Grid): number => Math.min(...boards.map((b) => b.cost / b.area));

function nextBoard(work: Work, task: FillTask, left: number[], free: readonly number[], rest: number) {
  const { grid, pricer, chance } = work;
  const shake = (share: number): number => 1 + task.noise * share * (chance() - 0.5);
  const wanted = (i: number): boolean => left[i]! > 0 && grid.parts[i]!.group < 0;
  const values = task.values.map((v, i) => (wanted(i) ? v * shake(1) : 0));
  pricer.prepare(values, left);
  let best: Look | undefined;
  let bestRank = 0;
  let last: Pattern | undefined;
  let lastCost = Infinity;
  const ranked = rankBoards(work, free, () => shake(BOARD_NOISE));
  for (const [n, { board, rank }] of ranked.entries()) {
    const { cost, area } = grid.boards[board]!;
    const mayBeLast = rest < area && cost < lastCost && n < BOTH_WAYS_LAST;
    const oneWay = n >= BOTH_WAYS && !mayBeLast;
    if (oneWay && rank < bestRank * WORTH_A_LOOK) continue;
    const look = lookAt(work, board, oneWay, left);
    const whole = mayBeLast ? mended(work, values, look, left) : undefined;
    if (whole && areaOf(grid, whole) >= rest) [last, lastCost] = [whole, cost];
    const worth = (worthOf(look.trimmed, values) / cost) * shake(BOARD_NOISE);
    if (worth > bestRank) [best, bestRank] = [look, worth];
  }
  return last ?? (best && mended(work, values, best, left));
}

/** A pattern of a board before and after its surplus parts are dropped. */
interface Look {
  readonly whole: Pattern;
  readonly trimmed: Pattern;
}

function lookAt({ grid, pricer, pool }: Work, board: number, ripOnly: boolean, left: readonly number[]): Look {
  pricer.best(board, ripOnly);
  const whole = pricer.pattern();
  const trimmed = take(grid, whole, [...left]);
  if (grid.boards.length <= FEW_BOARDS) pool.push(whole, trimmed);
  return { whole, trimmed };
}

/** The pattern with the room of its surplus parts filled again. */
function mended({ grid, spare, pool }: Work, values: Float64Array, { whole, trimmed }: Look, left: readonly number[]) {
  if (whole === trimmed) return trimmed;
  const pattern = withinDemand(grid, spare, values, whole, left);
  if (grid.boards.length <= FEW_BOARDS) pool.push(pattern);
  return worthOf(pattern, values) > worthOf(trimmed, values) ? pattern : trimmed;
}

const areaOf = ({ parts }: Grid, { counts }: Pattern): number =>
  counts.reduce((sum, n, i) => sum + n * parts[i]!.area, 0);

const worthOf = ({ counts }: Pattern, values: Float64Array): number =>
  counts.reduce((sum, n, i) => sum + n * values[i]!, 0);

/** With so few kinds of boards every pattern seen is remembered, to be combined anew. */
export const FEW_BOARDS = 10;

/** Free boards by value for cost when ripped first, best first; those that only crosscutting serves come when none is. */
function rankBoards({ grid, pricer }: Work, free: readonly number[], shake: () => number) {
  const open = free.flatMap((n, board) => (n > 0 ? [board] : []));
  const ranked = open.flatMap((board) => {
    const value = pricer.best(board, true);
    return value > 0 ? [{ board, rank: (value / grid.boards[board]!.cost) * shake() }] : [];
  });
  if (ranked.length > 0) return ranked.sort((a, b) => b.rank - a.rank || a.board - b.board);
  return open.filter((board) => pricer.best(board) > 0).map((board) => ({ board, rank: 1 }));
}
