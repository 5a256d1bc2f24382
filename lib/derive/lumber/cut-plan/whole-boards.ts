import type { PricedRound } from './root-bound.ts';
import type { Work } from './work.ts';

/** More kinds of boards than this: the bound of the mixed patterns is as good. */
const MOST_KINDS = 40;

/** Nodes of the search tree: the program is tiny. */
const NODES = 2000;

/**
 * A stronger bound where boards are few. Whatever is cut, the opened boards together must bring the value of the whole
 * demand, and board b never brings more than z(b); so for every round of prices
 *
 *     sum over boards z(b) y(b) >= sum v(i) demand(i),    y(b) whole, 0 <= y(b) <= count(b),
 *
 * and the least cost of whole boards y that keeps all these rows is a bound. The rounds of the column generation give the
 * rows for nothing.
 */
export function wholeBoardsBound(work: Work, rounds: readonly PricedRound[]): void {
  const { boards } = work.grid;
  if (boards.length > MOST_KINDS) return;
  const program = work.solver.program();
  try {
    const rows = valueRows(rounds);
    for (const _ of rows) program.addRow(1, Infinity);
    boards.forEach((board, b) => {
      const column = program.addColumn(board.cost, 0, board.ids.length, {
        rows: rows.map((_, r) => r),
        values: rows.map((row) => row[b]!),
      });
      program.makeWhole(column);
    });
    const { bound } = program.solveWhole({ nodes: NODES });
    if (Number.isFinite(bound)) work.bound = Math.max(work.bound, bound - SLACK * bound);
  } finally {
    program.dispose();
  }
}

/** Each round as a row: the share of the whole demand's value that one board of each kind brings at most. */
export const valueRows = (rounds: readonly PricedRound[]): Float64Array[] =>
  rounds.filter((r) => r.demandValue > 0).map((r) => r.boardValues.map((z) => Math.min(1, z / r.demandValue)));

/** Share given away for the solver's tolerance (it keeps rows to 1e-7). */
const SLACK = 1e-7;
