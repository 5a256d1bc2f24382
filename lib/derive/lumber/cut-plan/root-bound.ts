import type { MasterAnswer } from './column-master.ts';
import { demandOf, EQUAL, type Work } from './work.ts';

/** Prices of one round and the best pattern value of each board under them. */
export interface PricedRound {
  readonly demandValue: number;
  readonly boardValues: Float64Array;
}

/** What pricing all boards brought. */
export interface RootBound {
  readonly answer: MasterAnswer;
  readonly rounds: readonly PricedRound[];
  /** No pattern is left that would improve the master. */
  readonly converged: boolean;
}

/** Shares of the old prices that a round tries, until one brings a new pattern: steadies the prices. */
const OLD_SHARES = [0.5, 0.25, 0];

/** Close enough to the bound to go on: share of the value. */
const CLOSE = 5e-4;

/** A pattern joins when it saves more than this: scaled cost. */
const SAVES = 1e-7;

/**
 * Column generation. For any prices v >= 0 of the parts, with z(b) the value of the best pattern of board b under them,
 *
 *     bound = sum v(i) demand(i) - sum count(b) max(0, z(b) - cost(b))
 *
 * holds for every plan: its boards bring at least the whole demand's value, and no board b brings more than z(b) (the
 * Lagrangian bound of the demand rows). The master's prices make it as large as its own value when no pattern is left
 * that would save anything. One step is one round of pricing over all boards.
 */
export function* rootBound(work: Work, mostRounds: number): Generator<void, RootBound> {
  const { master } = work;
  const rounds: PricedRound[] = [];
  let answer = master.solve();
  let steady: Float64Array | undefined;
  for (let round = 0; round < mostRounds; round++) {
    let added = 0;
    for (let n = steady ? 0 : OLD_SHARES.length - 1; n < OLD_SHARES.length && added === 0; n++) {
      const prices: Float64Array = mixed(steady ?? answer.worth, answer.worth, OLD_SHARES[n]!);
      const priced = priceRound(work, prices, answer);
      rounds.push(priced.round);
      added = priced.added;
      if (priced.bound > work.bound) [work.bound, steady] = [priced.bound, prices];
    }
    yield;
    if (added === 0) return { answer, rounds, converged: true };
    answer = master.solve();
    if (isClose(answer, work.bound)) break;
  }
  return { answer, rounds, converged: false };
}

const isClose = ({ open, value }: MasterAnswer, bound: number): boolean =>
  open < EQUAL && value - bound <= CLOSE * value;

const mixed = (old: Float64Array, now: Float64Array, share: number): Float64Array =>
  now.map((p, i) => share * old[i]! + (1 - share) * p);

/**
 * The same bound at other prices: scaled down until no board brings more than it costs, the prices lose all deductions.
 * Better where there are plenty of boards of each kind.
 */
const scaledBound = ({ boards }: Work['grid'], demandValue: number, boardValues: Float64Array): number =>
  demandValue * boards.reduce((least, b, n) => Math.min(least, b.cost / Math.max(boardValues[n]!, b.cost)), 1);

function priceRound(work: Work, prices: Float64Array, answer: MasterAnswer) {
  const { grid, pricer, master } = work;
  const demand = demandOf(grid);
  pricer.prepare(prices, demand);
  const demandValue = prices.reduce((sum, p, i) => sum + p * demand[i]!, 0);
  const boardValues = new Float64Array(grid.boards.length);
  let bound = demandValue;
  let added = 0;
  grid.boards.forEach((board, b) => {
    const value = pricer.best(b);
    boardValues[b] = value;
    bound -= board.ids.length * Math.max(0, value - board.cost);
    if (value <= EQUAL) return;
    const pattern = pricer.pattern();
    const worth = pattern.counts.reduce((sum, n, i) => sum + n * answer.worth[i]!, 0);
    if (worth - board.cost - answer.scarcity[b]! > SAVES && master.add(pattern)) added++;
  });
  return {
    bound: Math.max(bound, scaledBound(grid, demandValue, boardValues)),
    added,
    round: { demandValue, boardValues },
  };
}
