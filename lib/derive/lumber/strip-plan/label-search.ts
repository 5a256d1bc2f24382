import { Heap } from './heap.ts';
import type { Effort, Incumbent } from './incumbent.ts';
import { flipExtra, type Label, labelOf, labelReserve, reserveCost } from './label.ts';
import { Relaxation, type Span } from './multipliers.ts';
import { orderBound } from './order-bound.ts';
import { Pairing } from './pairing.ts';
import { requirementsOf } from './requirements.ts';
import { BOTTOM, SHOW, SINGLE } from './role-table.ts';
import { opened, walkRoles } from './role-walk.ts';
import type { Entry, LabelEntry, OpenEntry, OrderEntry, SpanEntry } from './search-entries.ts';
import { showOrders } from './show-orders.ts';
import type { RowSlide } from './sliding.ts';
import type { StripModel } from './strip-model.ts';
import { byTone, toneWindows } from './tone-window.ts';
import { worstCost } from './worst-cost.ts';

/** Spans are halved down to this many mm of reserve (tried: finer costs more tables than it saves labels). */
const FINEST_SPAN = 0.4;
/** Subgradient steps for a span at first, and after it was halved. */
const FIRST_STEPS = 12;
const HALVED_STEPS = 25;
/** Places looked at before a label is split by its next show board, or an order by its next bottom board. */
const PART_EFFORT = 20_000;
/** Cost of a mm of blank that is not covered, to begin with (of the size found on random piles). */
const FIRST_WIDTH_PRICE = 0.03;
/** A stretch of a span: part of its bound at first, how much longer the next one is, and the states it may take. */
const FIRST_STRIDE = 0.004;
const STRIDE_GROWTH = 1.4;
const STRETCH_STATES = 100_000;
/** Bounds are sums in different orders: stretches overlap by this part, so that no label falls between two of them. */
const ROUNDING = 1e-9;
/**
 * Work of things, in units of about a microsecond: a step of raising a bound, opening a span, a label, a board placed on the way
 * to the bound of its orders, a pairing begun, a place looked at; and states walked through in a unit (measured roughly, 24 boards).
 */
const RAISE_WORK = 100;
const OPEN_WORK = 400;
const LABEL_WORK = 30;
const ORDER_WORK = 1;
const PAIRING_WORK = 100;
const PLACE_WORK = 3;
const STATES_PER_WORK = 4;

/**
 * Best first over everything that is still possible, each with a lower bound of its cost: spans of tone and reserve, boards
 * with roles given one by one, labels. What comes out of the heap has the least bound of all, so that bound holds for the whole
 * search; a label that comes out is solved exactly.
 */
export class LabelSearch {
  work = 0;
  private readonly model: StripModel;
  private readonly incumbent: Incumbent;
  private readonly heap = new Heap<Entry>();
  private readonly order: Int32Array;
  private readonly tones: readonly number[];
  private readonly relaxation: Relaxation;
  private readonly windows: ReturnType<typeof toneWindows>;
  private window = 0;
  private hint: readonly number[];
  private readonly rolesCost: Float64Array;
  private readonly worst: number;
  private readonly rows: readonly RowSlide[];
  private readonly solved = new Set<string>();
  private readonly orders = new Map<string, { readonly cost: number; readonly limit: number }>();

  constructor(model: StripModel, incumbent: Incumbent) {
    this.model = model;
    this.incumbent = incumbent;
    this.worst = worstCost(model);
    this.rolesCost = roleCosts(model);
    this.rows = slidesFreely(model) ? ['middle', 'off'] : ['any'];
    this.tones = byTone(model);
    this.order = Int32Array.from(model.boards.keys()).sort((a, b) => model.width[b]! - model.width[a]! || a - b);
    this.relaxation = new Relaxation(model, this.order, this.tones);
    this.windows = toneWindows(model, this.tones);
    this.hint = requirementsOf(model, 0).map((_, c) => (c === 0 ? FIRST_WIDTH_PRICE : 0));
  }

  /** Windows are still without a bound. */
  private get starting(): boolean {
    return this.window < this.windows.length;
  }

  get done(): boolean {
    return !this.starting && this.heap.least >= this.ceiling;
  }

  /** No plan costs less. */
  get bound(): number {
    if (this.starting) return Math.min(0, this.incumbent.value);
    return Math.min(this.heap.least, this.incumbent.value);
  }

  private get ceiling(): number {
    const { value } = this.incumbent;
    return value === Number.POSITIVE_INFINITY ? this.worst : value - this.model.prices.alike;
  }

  step(): void {
    if (this.starting) {
      this.startWindow();
      return;
    }
    const entry = this.heap.pop();
    if (entry.kind === 'span') this.openSpan(entry);
    else if (entry.kind === 'open') this.giveRoles(entry);
    else if (entry.kind === 'label') this.takeLabel(entry);
    else this.takeOrder(entry);
  }

  private startWindow(): void {
    const window = this.windows[this.window++]!;
    const span: Span = { window, low: 0, high: this.model.problem.settings.reserveCap };
    this.pushSpan(span, this.hint, FIRST_STEPS);
  }

  private pushSpan(span: Span, start: readonly number[], most: number): void {
    const { bound, multipliers, steps } = this.relaxation.raise(span, start, this.ceiling, most);
    this.work += RAISE_WORK * steps;
    if (bound === Number.POSITIVE_INFINITY) return;
    this.hint = multipliers;
    if (bound < this.ceiling) this.heap.push({ kind: 'span', key: bound, span, multipliers });
  }

  private openSpan(entry: SpanEntry): void {
    const { span, multipliers } = entry;
    if (span.high - span.low > FINEST_SPAN) {
      const middle = (span.low + span.high) / 2;
      this.pushSpan({ ...span, low: middle }, multipliers, HALVED_STEPS);
      this.pushSpan({ ...span, high: middle }, multipliers, HALVED_STEPS);
      return;
    }
    this.work += OPEN_WORK;
    const { table, fixed } = this.relaxation.table(span, multipliers);
    const requirements = this.relaxation.requirements(span);
    this.heap.push({
      kind: 'open',
      key: entry.key,
      span,
      opened: opened(this.model, table, fixed, requirements, span.low),
      stride: Math.max(FIRST_STRIDE * Math.abs(entry.key), this.model.prices.alike),
      states: 0,
    });
  }

  /** The next stretch of a span; a shorter one when it holds too much. */
  private giveRoles(entry: OpenEntry): void {
    const { key, span } = entry;
    for (let stride = entry.stride; ; stride /= 4) {
      const labels: LabelEntry[] = [];
      const below = Math.min(key + stride, this.ceiling);
      const last = stride < 1e-3 * entry.stride;
      const most = last ? Number.POSITIVE_INFINITY : STRETCH_STATES + 2 * entry.states;
      const found = (roles: Uint8Array): void => this.noteLabel(labels, span, key, roles);
      const states = walkRoles(this.model, entry.opened, key - ROUNDING * (1 + Math.abs(key)), below, most, found);
      this.work += (states ?? most) / STATES_PER_WORK;
      if (states === undefined) continue;
      for (const label of labels) this.heap.push(label);
      if (below < this.ceiling) this.heap.push({ ...entry, key: below, stride: stride * STRIDE_GROWTH, states });
      return;
    }
  }

  /** Keeps roles under a bound that is quickly told: the boards, the tones, and the reserve missing at least. */
  private noteLabel(labels: LabelEntry[], span: Span, least: number, roles: Uint8Array): void {
    const { model, rolesCost } = this;
    let cost = span.window.cost + reserveCost(model, span.high);
    for (let i = 0; i < roles.length; i++) cost += rolesCost[16 * i + roles[i]!]!;
    if (cost >= this.ceiling) return;
    labels.push({ kind: 'label', key: Math.max(cost, least), span, roles: roles.slice(), first: [] });
  }

  /** A label met in several spans is arranged once, for all reserves. */
  private labelFor({ roles, span }: LabelEntry): Label | undefined {
    const name = String.fromCharCode(...roles);
    if (this.solved.has(name)) return undefined;
    const label = labelOf(this.model, this.tones, roles, span.window.cost);
    const reserve = labelReserve(this.model, label);
    if (reserve === undefined || reserve < span.low - 1e-9) return undefined;
    this.solved.add(name);
    return label;
  }

  /** What the order of the show boards adds to a label; kept by show boards, for as high a limit as was asked. */
  private orderCost(label: Label): number {
    const limit = this.ceiling - label.cost;
    const name = `${label.shows.join()}|${[...label.alone].join()}`;
    const known = this.orders.get(name);
    if (known !== undefined && (known.cost < known.limit || known.limit >= limit)) return known.cost;
    const { cost, placed } = orderBound(this.model, label, limit);
    this.work += ORDER_WORK * placed;
    this.orders.set(name, { cost, limit });
    return cost;
  }

  private takeLabel(entry: LabelEntry): void {
    if (entry.label) {
      this.orderLabel(entry, entry.label);
      return;
    }
    this.work += LABEL_WORK;
    const label = this.labelFor(entry);
    if (!label) return;
    const { model } = this;
    const reserve = reserveCost(model, labelReserve(model, label)!);
    const least = label.cost + label.range + flipExtra(model, label) + reserve;
    if (least >= this.ceiling) return;
    const key = Math.max(entry.key, least, label.cost + this.orderCost(label));
    if (key < this.ceiling) this.heap.push({ ...entry, key, label });
  }

  private orderLabel(entry: LabelEntry, label: Label): void {
    const { first, key } = entry;
    const effort = this.effort(first);
    const orders = showOrders(this.model, label, first, this.incumbent, effort);
    this.work += PLACE_WORK * effort.spent;
    if (orders === undefined) {
      for (const i of label.shows) if (!first.includes(i)) this.heap.push({ ...entry, first: [...first, i] });
      return;
    }
    for (const order of orders) {
      for (const row of this.rows) {
        this.heap.push({ kind: 'order', key: Math.max(key, order.cost), label, order, row, first: [] });
      }
    }
  }

  private takeOrder(entry: OrderEntry): void {
    const { label, order, row, pairing, first } = entry;
    if (pairing === undefined) {
      this.work += PAIRING_WORK;
      const opened = new Pairing(this.model, label, order, row, this.incumbent);
      const key = Math.max(entry.key, opened.least);
      if (key < this.ceiling) this.heap.push({ ...entry, key, pairing: opened });
      return;
    }
    const effort = this.effort(first);
    const whole = pairing.search(first, effort);
    this.work += PLACE_WORK * effort.spent;
    if (whole) return;
    for (const choice of pairing.choices(first.length)) this.heap.push({ ...entry, first: [...first, choice] });
  }

  /** Effort of a part of a label or of an order: what is given whole is looked at whole. */
  private effort(first: readonly number[]): Effort {
    return { spent: 0, limit: first.length === this.model.strips ? Number.POSITIVE_INFINITY : PART_EFFORT };
  }
}

/** A row lies in the middle unless a strip is too thin there. */
const slidesFreely = ({ slope, problem }: StripModel): boolean =>
  slope > 0 && !problem.settings.seamOnCenterLine && problem.settings.leastHalf === 0;

/** Cost of each role of each board, 16 numbers a board. */
function roleCosts(model: StripModel): Float64Array {
  const costs = new Float64Array(16 * model.boards.length);
  for (let i = 0; i < model.boards.length; i++) {
    const show = Math.min(model.showCost[2 * i]!, model.showCost[2 * i + 1]!);
    costs[16 * i + SHOW] = show;
    costs[16 * i + SINGLE] = show;
    costs[16 * i + BOTTOM] = model.bottomCost[i]!;
  }
  return costs;
}
