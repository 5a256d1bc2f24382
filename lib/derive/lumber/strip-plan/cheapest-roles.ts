import { closingRank, stepPrice } from './role-steps.ts';
import { BOTTOM, IDLE, type RoleTable, SHOW, SINGLE, stateAt } from './role-table.ts';
import type { StripModel } from './strip-model.ts';

/** A board, its role, and the rank of the strip that it closes (-1: none). */
interface Given {
  readonly i: number;
  readonly role: number;
  readonly rank: number;
}

/** What each role adds to the strips begun and to the open halves. */
const MOVES = [
  { role: IDLE, begun: 0, open: 0 },
  { role: SHOW, begun: 1, open: 1 },
  { role: SINGLE, begun: 1, open: 0 },
  { role: BOTTOM, begun: 0, open: -1 },
] as const;

/** The roles by which a table comes to its least cost; none when it has no way at all. */
export function cheapest(model: StripModel, table: RoleTable): Given[] {
  const { strips } = model;
  const way: Given[] = [];
  let [begun, open] = [0, 0];
  for (const [q, i] of table.order.entries()) {
    const next = table.values[q + 1]!;
    let best = Number.POSITIVE_INFINITY;
    let chosen: (typeof MOVES)[number] | undefined;
    for (const move of MOVES) {
      if (!(table.roles[i]! & move.role) || !fits(strips, begun + move.begun, open + move.open)) continue;
      const price = stepPrice(model, table.prices, i, move.role, closingRank(move.role, begun, open));
      const total = price + next[stateAt(strips, begun + move.begun, open + move.open)]!;
      if (total < best) [best, chosen] = [total, move];
    }
    if (chosen === undefined) return [];
    way.push({ i, role: chosen.role, rank: closingRank(chosen.role, begun, open) });
    begun += chosen.begun;
    open += chosen.open;
  }
  return way;
}

/** Strips begun on either side are no more than there are. */
const fits = (strips: number, begun: number, open: number): boolean => begun <= strips && begun - open <= strips;
