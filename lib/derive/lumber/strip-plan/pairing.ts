import { FlipCosts, sideCosts } from './flip-costs.ts';
import { type Effort, type Incumbent, improve } from './incumbent.ts';
import { judge } from './judge.ts';
import type { Label } from './label.ts';
import { Matching } from './matching.ts';
import { mostReserve } from './most-reserve.ts';
import { RowRange } from './row-range.ts';
import { reachOf, type ShowOrder } from './show-orders.ts';
import type { RowSlide, Sliding } from './sliding.ts';
import type { StripModel } from './strip-model.ts';
import { UndersideFloors } from './underside-floors.ts';

/**
 * Looks for a plan cheaper than the incumbent among all pairings of an order of show boards with bottom boards, strip by strip
 * from the left.
 */
export class Pairing {
  /** No pairing costs less; Infinity when none can be cheaper than the incumbent. */
  readonly least: number;
  private readonly model: StripModel;
  private readonly label: Label;
  private readonly order: ShowOrder;
  private readonly row: RowSlide;
  private readonly incumbent: Incumbent;
  private readonly reach: Float64Array;
  private readonly single: readonly boolean[];
  private readonly matching: Matching;
  private readonly bottoms: number[] = [];
  private readonly edges: Float64Array;
  private readonly spare: Float64Array;
  private readonly fits: Int32Array;
  private readonly floors: UndersideFloors;
  private readonly flips: FlipCosts;
  /** Show boards of two layers and bottom boards by falling width, for the widest pairing of those that are left. */
  private readonly wideShows: readonly number[];
  private readonly wideBottoms: readonly number[];
  private readonly narrowBottoms: readonly number[];
  /** Least cost of the underside of the strips before each. */
  private readonly under: Float64Array;
  private readonly range: RowRange;
  private readonly placed: Uint8Array;
  private readonly taken: Uint8Array;
  private mask = 0;
  private first: readonly number[] = [];
  private effort: Effort = { spent: 0, limit: 0 };

  constructor(model: StripModel, label: Label, order: ShowOrder, row: RowSlide, incumbent: Incumbent) {
    const { shows } = order;
    this.model = model;
    this.label = label;
    this.order = order;
    this.row = row;
    this.incumbent = incumbent;
    this.reach = reachOf(model, label);
    this.single = shows.map((i) => label.alone.has(i));
    this.matching = new Matching(label.bottoms.length, model.strips);
    this.edges = new Float64Array(model.strips + 1);
    this.spare = new Float64Array(model.strips);
    this.fits = new Int32Array(model.strips);
    this.flips = new FlipCosts(model);
    const wide = (boards: readonly number[]): number[] => [...boards].sort((a, b) => model.width[b]! - model.width[a]!);
    this.wideShows = wide(shows.filter((i) => !label.alone.has(i)));
    this.wideBottoms = wide(label.bottoms);
    this.narrowBottoms = this.wideBottoms.toReversed();
    this.under = new Float64Array(model.strips + 1);
    this.placed = new Uint8Array(model.boards.length);
    this.taken = new Uint8Array(model.boards.length);
    const reserve = this.leastReserve(order.cost - order.boards);
    const possible = reserve !== undefined && this.canGoOn(0, reserve);
    const fits = this.fits.slice();
    this.range = new RowRange(model, label, shows, row, fits);
    this.floors = new UndersideFloors(model, label, shows, this.range.shift(0, 0), fits);
    this.least = possible && this.range.isPossible(0, 0) ? order.boards + this.atLeast(0) : Number.POSITIVE_INFINITY;
  }

  /** Goes through the pairings that begin with given bottom boards (by their bit; -1: none). False when the effort ran out. */
  search(first: readonly number[], effort: Effort): boolean {
    this.first = first;
    this.effort = effort;
    this.mask = 0;
    this.placed.fill(0);
    this.taken.fill(0);
    return this.next(0);
  }

  /** Bottom boards that a strip may come to have, by their bit; -1: none. */
  choices(j: number): readonly number[] {
    return this.single[j] ? [-1] : [...this.label.bottoms.keys()];
  }

  private next(j: number): boolean {
    const { model, effort } = this;
    if (++effort.spent > effort.limit) return false;
    if (j === model.strips) {
      this.judge();
      return true;
    }
    const reserve = this.leastReserve(this.atLeast(j));
    if (reserve === undefined || !this.range.isPossible(j, this.mask) || !this.canGoOn(j, reserve)) return true;
    // Read once: deeper strips write only their own.
    const fits = this.single[j] ? 0 : this.fits[j]!;
    this.placed[this.order.shows[j]!] = 1;
    let whole = !this.single[j] || this.put(j, -1);
    const forced = this.first[j];
    for (let bit = 0; whole && fits >> bit !== 0; bit++) {
      if ((fits >> bit) & 1 && (forced === undefined || forced === bit)) whole = this.put(j, bit);
    }
    this.placed[this.order.shows[j]!] = 0;
    return whole;
  }

  /** What sides and undersides cost at least, the strips before j being laid. */
  private atLeast(j: number): number {
    return this.flips.with(this.floors.sides, j) + this.under[j]! + this.floors.rest(j, this.mask);
  }

  /** A cheaper plan of this order must have this much reserve; undefined when none can be cheaper. `extra`: cost besides boards and tones. */
  private leastReserve(extra: number): number | undefined {
    const { model, incumbent } = this;
    const room = incumbent.value - model.prices.alike - this.order.boards - extra;
    if (room <= 0) return undefined;
    const price = model.prices.of.reserve;
    return price === 0 ? 0 : Math.max(0, model.problem.settings.reserveCap - room / price);
  }

  /** Lays a bottom board (by its bit; -1: none) into strip j and goes on. */
  private put(j: number, bit: number): boolean {
    const { model, label } = this;
    const show = this.order.shows[j]!;
    const bottom = bit < 0 ? -1 : label.bottoms[bit]!;
    const width = bottom < 0 ? model.width[show]! : Math.min(model.width[show]!, model.width[bottom]!);
    if (bottom >= 0) {
      this.taken[bottom] = 1;
      this.mask |= 1 << bit;
    }
    const right = this.widestRest();
    this.bottoms[j] = bottom;
    this.edges[j + 1] = this.edges[j]! + width;
    this.spare[j] = model.thick[show]! + (bottom < 0 ? 0 : model.thick[bottom]!) - model.base;
    const anywhere = this.stripOf(j, width, right);
    const stays = this.range.lay(j, anywhere, this.spare[j]!);
    const strip = { ...anywhere, shift: this.range.shift(j + 1, this.mask) };
    const [up, down] = sideCosts(model, show, strip);
    this.flips.lay(j, up, down);
    this.under[j + 1] = this.under[j]! + (bit < 0 ? 0 : this.floors.bottom(bit, strip));
    const reserve = this.leastReserve(this.atLeast(j + 1));
    const inner = Math.max(0, this.edges[j]! - model.half, right - model.half);
    const wide = this.edges[j + 1]! + right >= 2 * model.half - 1e-9;
    const thick = reserve !== undefined && this.spare[j]! + model.slope * inner >= reserve - 1e-9;
    const whole = wide && thick && stays ? this.next(j + 1) : true;
    if (bottom >= 0) {
      this.taken[bottom] = 0;
      this.mask &= ~(1 << bit);
    }
    return whole;
  }

  /** Strip j wherever the row lies, the strips before it being laid, at most `right` mm of strips after it. */
  private stripOf(j: number, width: number, right: number): Sliding {
    const before = this.edges[j]!;
    const rest = this.row === 'any' ? 0 : this.narrowestRest();
    const laid = before + width;
    return {
      strip: j,
      width: [width, width],
      before: [before, before],
      after: [rest, right],
      total: [laid + rest, laid + right],
      shift: undefined,
    };
  }

  /** mm that the strips not yet paired can cover at least: wide boards on narrow boards. */
  private narrowestRest(): number {
    return this.restWidth(this.narrowBottoms);
  }

  /** The same at most: wide boards on wide boards. */
  private widestRest(): number {
    return this.restWidth(this.wideBottoms);
  }

  private restWidth(bottoms: readonly number[]): number {
    const { width } = this.model;
    let [sum, at] = [0, 0];
    for (const show of this.wideShows) {
      if (this.placed[show]) continue;
      while (this.taken[bottoms[at]!]) at++;
      sum += Math.min(width[show]!, width[bottoms[at++]!]!);
    }
    for (const show of this.label.alone) if (!this.placed[show]) sum += width[show]!;
    return sum;
  }

  /** Every strip from j on can have a bottom board of its own that is thick and wide enough, as far as can be told. */
  private canGoOn(j: number, reserve: number): boolean {
    const { model, reach } = this;
    const { half } = model;
    let rest = 0;
    for (let q = j; q < model.strips; q++) rest += reach[this.order.shows[q]!]!;
    const loss = this.edges[j]! + rest - 2 * half;
    if (loss < -1e-9) return false;
    let left = this.edges[j]!;
    this.matching.start(j);
    for (let q = j; q < model.strips; q++) {
      const wide = reach[this.order.shows[q]!]!;
      rest -= wide;
      const inner = Math.max(0, left - half, rest - half);
      left += wide;
      if (!this.canStand(q, inner, reserve, loss)) return false;
    }
    return true;
  }

  /** Strip q can have a bottom board of its own, its inner edge that far from the center line. */
  private canStand(q: number, inner: number, reserve: number, loss: number): boolean {
    const { model, label, reach } = this;
    const { thick, width, uses } = model;
    const show = this.order.shows[q]!;
    const want = model.base - model.slope * inner + reserve - thick[show]! - 1e-9;
    let fits = 0;
    if (!this.single[q]) {
      for (let bit = 0; bit < label.bottoms.length; bit++) {
        const b = label.bottoms[bit]!;
        const serves = !this.taken[b] && thick[b]! >= want && reach[show]! - width[b]! <= loss + 1e-9;
        if (serves && (uses[b]!.strips >> q) & 1) fits |= 1 << bit;
      }
    } else if (want > 0) return false;
    this.fits[q] = fits;
    return this.matching.add(this.fits, q, this.single[q]!);
  }

  /** Judges a pairing that is whole, unless its reserve alone makes it too dear. */
  private judge(): void {
    const { model, incumbent } = this;
    if (this.edges[model.strips]! < 2 * model.half - 1e-9) return;
    const reserve = mostReserve(model, { edges: this.edges, spare: this.spare });
    const cap = model.problem.settings.reserveCap;
    const missing = model.prices.counted('reserve', cap - Math.min(cap, reserve));
    const boards = this.order.boards + this.flips.least(model.strips);
    const most = incumbent.value - model.prices.alike - boards - model.prices.of.reserve * missing;
    if (reserve < -1e-9 || most <= 0) return;
    const judged = judge(model, { shows: this.order.shows, bottoms: [...this.bottoms] }, most);
    if (judged !== undefined) improve(model, incumbent, judged);
  }
}
