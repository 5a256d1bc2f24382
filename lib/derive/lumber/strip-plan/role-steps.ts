import type { Requirement } from './requirements.ts';
import { BOTTOM, closed, IDLE, type RolePrices, SHOW, SINGLE } from './role-table.ts';
import type { StripModel } from './strip-model.ts';

/** Rank of the strip that a role closes, from a state of the table; -1 when it closes none. */
export function closingRank(role: number, begun: number, open: number): number {
  if (role === SINGLE) return closed(begun, open);
  if (role === SHOW) return open < 0 ? begun : -1;
  return role === BOTTOM && open > 0 ? begun - open : -1;
}

/** Price of a role for board i, with the strip of a rank that it closes (-1: none). */
export function stepPrice(model: StripModel, prices: RolePrices, i: number, role: number, rank: number): number {
  if (role === IDLE) return 0;
  if (role === SINGLE) return prices.single[i]! - prices.singleWorth[rank * model.boards.length + i]!;
  const closing = rank < 0 ? 0 : prices.worth[rank]! * model.width[i]!;
  return (role === SHOW ? prices.show[i]! : prices.bottom[i]!) - closing;
}

/** What a board in a role gives to a requirement, with the strip of a rank that it closes (-1: none). */
export function given(model: StripModel, r: Requirement, i: number, role: number, rank: number): number {
  if (role === IDLE) return 0;
  if (role === SINGLE) return r.single[i]! + r.share[rank]! * r.singleWidth[i]!;
  const width = rank < 0 ? 0 : r.share[rank]! * model.width[i]!;
  return (role === SHOW ? r.show[i]! : r.bottom[i]!) + width;
}
