import { cheapest } from './cheapest-roles.ts';
import { type Requirement, requirementsOf } from './requirements.ts';
import { given } from './role-steps.ts';
import { fillTable, type RoleTable, rolePrices, stateAt, tableRows } from './role-table.ts';
import type { StripModel } from './strip-model.ts';
import { type ToneWindow, windowRoles } from './tone-window.ts';

/** Show boards within a window of tones, a reserve between two values. Together the spans hold every plan. */
export interface Span {
  readonly window: ToneWindow;
  /** mm; the last span reaches from `low` to any reserve. */
  readonly low: number;
  readonly high: number;
}

/** What a span costs at least. */
export interface Relaxed {
  readonly bound: number;
  readonly multipliers: readonly number[];
  /** Steps taken to get there. */
  readonly steps: number;
}

/** Prices in the multipliers of a span, and what they add whatever the boards. */
interface Priced {
  readonly table: RoleTable;
  readonly fixed: number;
  /** The reserve that costs least at these prices. */
  readonly reserve: number;
}

/** Lower bounds of spans by Lagrangian relaxation: requirements are paid for with multipliers instead of asked for. */
export class Relaxation {
  private readonly rows: Float64Array[];
  private readonly model: StripModel;
  private readonly order: Int32Array;
  private readonly tones: readonly number[];

  /** `order` is by falling width, `tones` from the lightest to the darkest. */
  constructor(model: StripModel, order: Int32Array, tones: readonly number[]) {
    this.model = model;
    this.order = order;
    this.tones = tones;
    this.rows = tableRows(model);
  }

  /** The table of a span at given multipliers, to keep. */
  table(span: Span, multipliers: readonly number[]): Priced {
    return this.priced(span, this.requirements(span), multipliers, tableRows(this.model));
  }

  requirements(span: Span): readonly Requirement[] {
    return requirementsOf(this.model, span.low);
  }

  /**
   * Raises the bound by subgradient steps from multipliers that did well nearby; stops as soon as it reaches `enough`.
   * The bound of any multipliers holds, so the number of steps is a matter of speed alone.
   */
  raise(span: Span, start: readonly number[], enough: number, steps: number): Relaxed {
    const requirements = this.requirements(span);
    let multipliers = start;
    let best: Relaxed = { bound: Number.NEGATIVE_INFINITY, multipliers, steps: 0 };
    let taken = 0;
    let stride = 1;
    for (let step = 0; step < steps; step++) {
      taken = step + 1;
      const priced = this.priced(span, requirements, multipliers, this.rows);
      const bound = priced.table.values[0]![stateAt(this.model.strips, 0, 0)]! + priced.fixed;
      if (bound > best.bound + 1e-9) best = { bound, multipliers, steps: taken };
      else stride *= 0.6;
      if (best.bound >= enough || step === steps - 1) break;
      const missing = this.missing(requirements, priced);
      const norm = missing.reduce((sum, m) => sum + m * m, 0);
      if (norm < 1e-9) break;
      const pace = (stride * Math.max(enough - best.bound, 1e-3 * Math.abs(enough))) / norm;
      multipliers = multipliers.map((value, c) => Math.max(0, value + pace * missing[c]!));
    }
    return { ...best, steps: taken };
  }

  private priced(
    { window, low, high }: Span,
    requirements: readonly Requirement[],
    multipliers: readonly number[],
    rows: readonly Float64Array[],
  ): Priced {
    const { prices, problem } = this.model;
    const roles = windowRoles(this.model, this.tones, window, low);
    const table = fillTable(
      this.model,
      this.order,
      roles,
      rolePrices(this.model, requirements, multipliers, true),
      rows,
    );
    const paid = requirements.reduce((sum, r, c) => sum + multipliers[c]! * r.needPerReserve, 0);
    const reserve = paid > prices.of.reserve ? low : high;
    const needs = requirements.reduce((sum, r, c) => sum + multipliers[c]! * r.need, 0);
    const reserveCost = prices.of.reserve * (problem.settings.reserveCap - reserve);
    return { table, fixed: needs + paid * reserve + reserveCost + window.cost, reserve };
  }

  /** By how much the cheapest boards of a table miss each requirement; negative where they have too much. */
  private missing(requirements: readonly Requirement[], { table, reserve }: Priced): number[] {
    const { model } = this;
    const missing = requirements.map((r) => r.need + r.needPerReserve * reserve);
    for (const { i, role, rank } of cheapest(model, table)) {
      for (let c = 0; c < missing.length; c++) missing[c]! -= given(model, requirements[c]!, i, role, rank);
    }
    return missing;
  }
}
