import type { Requirement } from './requirements.ts';
import { closingRank, given, stepPrice } from './role-steps.ts';
import { BOTTOM, fillTable, IDLE, type RoleTable, rolePrices, SHOW, SINGLE, stateAt, tableRows } from './role-table.ts';
import type { StripModel } from './strip-model.ts';

/** A span of plans with its table of prices, and what can still be given to each requirement. */
export interface Opened {
  readonly table: RoleTable;
  /** What the prices of the table leave out. */
  readonly fixed: number;
  readonly requirements: readonly Requirement[];
  /** Least of what is wanted by each requirement, for the least reserve of the span. */
  readonly wanted: readonly number[];
  /** For each requirement, minus the most that the boards still to come can give, by state. */
  readonly reach: readonly (readonly Float64Array[])[];
}

/** Opens a span: one more table for each requirement. */
export function opened(
  model: StripModel,
  table: RoleTable,
  fixed: number,
  requirements: readonly Requirement[],
  reserve: number,
): Opened {
  const reach = requirements.map((_, c) => {
    const unit = requirements.map((__, d) => (c === d ? 1 : 0));
    const prices = rolePrices(model, requirements, unit, false);
    return fillTable(model, table.order, table.roles, prices, tableRows(model)).values;
  });
  const wanted = requirements.map((r) => r.need + r.needPerReserve * reserve);
  return { table, fixed, requirements, wanted, reach };
}

/**
 * All ways to give the boards roles whose bound lies between `from` and `below`, by depth-first search along the table. Tells
 * each as roles by board. Answers the states gone through, or undefined when there were more than `most`.
 */
export function walkRoles(
  model: StripModel,
  span: Opened,
  from: number,
  below: number,
  most: number,
  found: (roles: Uint8Array) => void,
): number | undefined {
  const walk = new Walk(model, span, from - span.fixed, below - span.fixed, most, found);
  return walk.go(0, 0, 0, 0) ? walk.states : undefined;
}

/** No objects are made on the way: millions of states are gone through. */
class Walk {
  states = 0;
  private readonly model: StripModel;
  private readonly span: Opened;
  private readonly from: number;
  private readonly below: number;
  private readonly most: number;
  private readonly found: (roles: Uint8Array) => void;
  private readonly roles: Uint8Array;
  /** What the boards so far give to each requirement, a row a depth. */
  private readonly sums: Float64Array;

  constructor(
    model: StripModel,
    span: Opened,
    from: number,
    below: number,
    most: number,
    found: (roles: Uint8Array) => void,
  ) {
    const n = span.table.order.length;
    this.model = model;
    this.span = span;
    this.from = from;
    this.below = below;
    this.most = most;
    this.found = found;
    this.roles = new Uint8Array(n);
    this.sums = new Float64Array((n + 1) * span.requirements.length);
  }

  /** Boards from place `q` of the order on; see `RoleTable` for begun and open. False when there are too many states. */
  go(q: number, begun: number, open: number, price: number): boolean {
    if (++this.states > this.most) return false;
    const { table } = this.span;
    if (q === table.order.length) {
      if (price >= this.from) this.found(this.roles);
      return true;
    }
    const i = table.order[q]!;
    const allowed = table.roles[i]!;
    const { strips } = this.model;
    if (allowed & IDLE && !this.take(q, i, IDLE, begun, open, begun, open, price)) return false;
    const room = open > begun - strips;
    if (allowed & BOTTOM && room && !this.take(q, i, BOTTOM, begun, open, begun, open - 1, price)) return false;
    if (begun === strips) return true;
    if (allowed & SHOW && !this.take(q, i, SHOW, begun, open, begun + 1, open + 1, price)) return false;
    return !(allowed & SINGLE && room) || this.take(q, i, SINGLE, begun, open, begun + 1, open, price);
  }

  private take(
    q: number,
    i: number,
    role: number,
    begun: number,
    open: number,
    toBegun: number,
    toOpen: number,
    price: number,
  ): boolean {
    const rank = closingRank(role, begun, open);
    const cost = price + stepPrice(this.model, this.span.table.prices, i, role, rank);
    const at = stateAt(this.model.strips, toBegun, toOpen);
    if (!(cost + this.span.table.values[q + 1]![at]! < this.below) || !this.canGive(q, i, role, rank, at)) return true;
    this.roles[i] = role;
    return this.go(q + 1, toBegun, toOpen, cost);
  }

  /** The requirements can still be met after board i takes a role. */
  private canGive(q: number, i: number, role: number, rank: number, at: number): boolean {
    const { requirements, reach, wanted } = this.span;
    const count = requirements.length;
    for (let c = 0; c < count; c++) {
      const sum = this.sums[q * count + c]! + given(this.model, requirements[c]!, i, role, rank);
      this.sums[(q + 1) * count + c] = sum;
      if (sum - reach[c]![q + 1]![at]! < wanted[c]! - 1e-7) return false;
    }
    return true;
  }
}
