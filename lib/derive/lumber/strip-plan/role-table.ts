import type { Requirement } from './requirements.ts';
import type { StripModel } from './strip-model.ts';

/** What a board may be: a show board over a bottom board, that bottom board, a strip by itself, left over. */
export const SHOW = 1;
export const BOTTOM = 2;
export const SINGLE = 4;
export const IDLE = 8;

/** Prices of roles and widths once the requirements are paid for instead of asked for. */
export interface RolePrices {
  readonly show: Float64Array;
  readonly bottom: Float64Array;
  readonly single: Float64Array;
  /** What a mm of a strip is worth, by rank. */
  readonly worth: Float64Array;
  /** What a single strip is worth by its width: `rank * boards + board`. */
  readonly singleWorth: Float64Array;
}

/** Prices that pay `multipliers` for each unit of the requirements. `costs` false: the requirements alone. */
export function rolePrices(
  model: StripModel,
  requirements: readonly Requirement[],
  multipliers: readonly number[],
  costs: boolean,
): RolePrices {
  const n = model.boards.length;
  const prices: RolePrices = {
    show: new Float64Array(n),
    bottom: new Float64Array(n),
    single: new Float64Array(n),
    worth: new Float64Array(model.strips),
    singleWorth: new Float64Array(n * model.strips),
  };
  for (let i = 0; i < n; i++) {
    if (costs) {
      prices.show[i] = Math.min(model.showCost[2 * i]!, model.showCost[2 * i + 1]!);
      prices.single[i] = prices.show[i]!;
      prices.bottom[i] = model.bottomCost[i]!;
    }
    requirements.forEach((r, c) => {
      const paid = multipliers[c]!;
      prices.show[i]! -= paid * r.show[i]!;
      prices.bottom[i]! -= paid * r.bottom[i]!;
      prices.single[i]! -= paid * r.single[i]!;
      for (let rank = 0; rank < model.strips; rank++) {
        prices.singleWorth[rank * n + i]! += paid * r.share[rank]! * r.singleWidth[i]!;
      }
    });
  }
  for (let rank = 0; rank < model.strips; rank++) {
    requirements.forEach((r, c) => {
      prices.worth[rank]! += multipliers[c]! * r.share[rank]!;
    });
  }
  return prices;
}

/**
 * Least cost to finish, by boards still to come (widest first), strips begun by a show board, and open halves: show boards that
 * wait for a bottom board (positive) or bottom boards that wait for a show board (negative). Pairs that close with their
 * narrower board, the widest open one first, are as wide together as any pairing of the same boards: a lower bound.
 */
export interface RoleTable {
  readonly values: readonly Float64Array[];
  /** Boards by falling width. */
  readonly order: Int32Array;
  /** Roles allowed, by board. */
  readonly roles: Uint8Array;
  readonly prices: RolePrices;
}

export const span = (strips: number): number => 2 * strips + 1;

/** Place of a state in a row of the table. */
export const stateAt = (strips: number, begun: number, open: number): number => begun * span(strips) + open + strips;

/** Strips closed in a state: that many are wider than the next to close. */
export const closed = (begun: number, open: number): number => begun - Math.max(0, open);

/** Fills the table backwards; `rows` is reused when given. */
export function fillTable(
  model: StripModel,
  order: Int32Array,
  roles: Uint8Array,
  prices: RolePrices,
  rows: readonly Float64Array[] = tableRows(model),
): RoleTable {
  const { strips } = model;
  const n = order.length;
  rows[n]!.fill(Number.POSITIVE_INFINITY);
  rows[n]![stateAt(strips, strips, 0)] = 0;
  for (let q = n - 1; q >= 0; q--) fillRow(model, order[q]!, q, roles[order[q]!]!, prices, rows[q]!, rows[q + 1]!);
  return { values: rows, order, roles, prices };
}

export const tableRows = (model: StripModel): Float64Array[] =>
  Array.from({ length: model.boards.length + 1 }, () => new Float64Array((model.strips + 1) * span(model.strips)));

/** One board in a role: its price, and what the strip that it closes is worth. */
interface Role {
  /** Strips begun and open halves that it adds. */
  readonly begun: number;
  readonly open: number;
  readonly price: number;
  /** Worth of the strip that it closes from a state of so many strips closed; undefined where it closes none. */
  readonly worth: Float64Array;
  /** Sign of the open halves from which it closes a strip; 0: always. */
  readonly closes: -1 | 0 | 1;
}

/** Least cost from a row of states on, board i having one of its roles. */
function fillRow(
  model: StripModel,
  i: number,
  q: number,
  roles: number,
  prices: RolePrices,
  row: Float64Array,
  next: Float64Array,
): void {
  if (roles & IDLE) row.set(next);
  else row.fill(Number.POSITIVE_INFINITY);
  const n = model.boards.length;
  const width = model.width[i]!;
  const closing = prices.worth.map((worth) => worth * width);
  if (roles & SHOW)
    improve(model, q, { begun: 1, open: 1, price: prices.show[i]!, worth: closing, closes: -1 }, row, next);
  if (roles & BOTTOM) {
    improve(model, q, { begun: 0, open: -1, price: prices.bottom[i]!, worth: closing, closes: 1 }, row, next);
  }
  if (roles & SINGLE) {
    const alone = Float64Array.from(prices.worth, (_, rank) => prices.singleWorth[rank * n + i]!);
    improve(model, q, { begun: 1, open: 0, price: prices.single[i]!, worth: alone, closes: 0 }, row, next);
  }
}

/** Takes a role into a row wherever it is allowed and cheaper. */
function improve({ strips }: StripModel, q: number, role: Role, row: Float64Array, next: Float64Array): void {
  const across = span(strips);
  const most = Math.min(strips - role.begun, q);
  for (let begun = 0; begun <= most; begun++) {
    // A role that begins a strip needs one that is not begun from either side.
    const least = Math.max(begun - strips + (role.closes < 0 ? 0 : 1), -q);
    for (let open = least; open <= begun; open++) {
      const at = begun * across + open + strips;
      const total = next[at + role.begun * across + role.open]! + role.price - worthOf(role, begun, open);
      if (total < row[at]!) row[at] = total;
    }
  }
}

/** Worth of the strip that a role closes from a state, 0 when it closes none. */
const worthOf = ({ closes, worth }: Role, begun: number, open: number): number =>
  closes === 0 || closes * open > 0 ? worth[closed(begun, open)]! : 0;
