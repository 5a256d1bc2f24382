import { BOTTOM, closed, IDLE, type RolePrices, SHOW, SINGLE } from './role-table.ts';
import type { StripModel } from './strip-model.ts';

/** Strips begun by a show board, and open halves: see `RoleTable`. */
export interface RoleState {
  readonly begun: number;
  readonly open: number;
}

/** One board given a role. */
export interface RoleStep {
  readonly role: number;
  readonly to: RoleState;
  readonly price: number;
}

/** The steps that board `i` may take from a state. */
export function roleSteps(
  model: StripModel,
  i: number,
  roles: number,
  { begun, open }: RoleState,
  prices: RolePrices,
): RoleStep[] {
  const { strips } = model;
  const steps: RoleStep[] = [];
  const rank = closed(begun, open);
  const full = open === begun - strips;
  const width = model.width[i]!;
  const closing = rank < strips ? prices.worth[rank]! * width : 0;
  if (roles & IDLE) steps.push({ role: IDLE, to: { begun, open }, price: 0 });
  if (roles & SHOW && begun < strips) {
    const price = prices.show[i]! - (open < 0 ? closing : 0);
    steps.push({ role: SHOW, to: { begun: begun + 1, open: open + 1 }, price });
  }
  if (roles & SINGLE && begun < strips && !full) {
    const price = prices.single[i]! - prices.singleWorth[rank * model.boards.length + i]!;
    steps.push({ role: SINGLE, to: { begun: begun + 1, open }, price });
  }
  if (roles & BOTTOM && !full) {
    const price = prices.bottom[i]! - (open > 0 ? closing : 0);
    steps.push({ role: BOTTOM, to: { begun, open: open - 1 }, price });
  }
  return steps;
}

/** Mm of strip that a step closes, and its rank; undefined when it closes none. */
export function closes(role: number, { begun, open }: RoleState): number | undefined {
  const rank = closed(begun, open);
  if (role === SINGLE) return rank;
  if (role === SHOW) return open < 0 ? rank : undefined;
  return role === BOTTOM && open > 0 ? rank : undefined;
}
