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

function fillRow(
  model: StripModel,
  i: number,
  q: number,
  role: number,
  prices: RolePrices,
  row: Float64Array,
  next: Float64Array,
): void {
  const { strips } = model;
  const n = model.boards.length;
  const across = span(strips);
  const idle = (role & IDLE) !== 0;
  const asShow = (role & SHOW) !== 0 ? prices.show[i]! : Number.POSITIVE_INFINITY;
  const asBottom = (role & BOTTOM) !== 0 ? prices.bottom[i]! : Number.POSITIVE_INFINITY;
  const asSingle = (role & SINGLE) !== 0 ? prices.single[i]! : Number.POSITIVE_INFINITY;
  const width = model.width[i]!;
  for (let begun = 0, most = Math.min(strips, q); begun <= most; begun++) {
    const least = Math.max(begun - strips, -q);
    for (let open = least; open <= begun; open++) {
      const at = begun * across + open + strips;
      let best = idle ? next[at]! : Number.POSITIVE_INFINITY;
      if (begun < strips) {
        const rank = open > 0 ? begun - open : begun;
        const show = next[at + across + 1]! + asShow - (open < 0 ? prices.worth[rank]! * width : 0);
        if (show < best) best = show;
        if (open > begun - strips) {
          const single = next[at + across]! + asSingle - prices.singleWorth[rank * n + i]!;
          if (single < best) best = single;
        }
      }
      if (open > begun - strips) {
        const bottom = next[at - 1]! + asBottom - (open > 0 ? prices.worth[begun - open]! * width : 0);
        if (bottom < best) best = bottom;
      }
      row[at] = best;
    }
  }
}
