import type { Effort, Incumbent } from './arrange.ts';
import type { Label } from './label.ts';
import { Matching } from './matching.ts';
import { mostReserve } from './most-reserve.ts';
import type { StripModel } from './strip-model.ts';
import { undersideFloor } from './underside-floor.ts';

/** What stays the same over all orders of a label. */
export interface Pairing {
  readonly model: StripModel;
  readonly label: Label;
  /** mm that a strip with a show board can be wide at most. */
  readonly reach: Float64Array;
  readonly incumbent: Incumbent;
  readonly effort: Effort;
}

/**
 * Goes through the pairings of an order of show boards with bottom boards, left to right, and tells each that may be cheaper
 * than the incumbent, with the most that it may cost besides. `cost` is what the order costs without its reserve. Answers false when the effort ran out.
 */
export function pairBottoms(
  pairing: Pairing,
  shows: readonly number[],
  cost: number,
  found: (bottoms: number[], most: number) => void,
): boolean {
  return new Pairer(pairing, shows, cost, found).next(0);
}

/** Ripping the row to the blank may use up an outer strip and go on into the next. */
function mayRipThrough({ model, label, reach }: Pairing): boolean {
  const broad = label.shows.reduce((sum, i) => sum + reach[i]!, 0);
  const widths = [...label.shows, ...label.bottoms].map((i) => model.width[i]!);
  return broad - 2 * model.half > Math.min(...widths) - model.problem.settings.leastWidth;
}

class Pairer {
  private readonly pairing: Pairing;
  private readonly shows: readonly number[];
  private readonly cost: number;
  private readonly found: (bottoms: number[], most: number) => void;
  private readonly single: readonly boolean[];
  private readonly matching: Matching;
  private readonly bottoms: number[] = [];
  private readonly edges: Float64Array;
  private readonly spare: Float64Array;
  private readonly fits: Int32Array;
  /** Show boards of two layers and bottom boards by falling width, for the widest pairing of those that are left. */
  private readonly wideShows: readonly number[];
  private readonly wideBottoms: readonly number[];
  /** Least cost of the underside: of the strips before each, and of each strip with each bottom board (NaN: not yet asked). */
  private readonly under: Float64Array;
  private readonly floors: Float64Array;
  private readonly floorsHold: boolean;
  private readonly placed: Uint8Array;
  private readonly taken: Uint8Array;

  constructor(
    pairing: Pairing,
    shows: readonly number[],
    cost: number,
    found: (bottoms: number[], most: number) => void,
  ) {
    const { model, label } = pairing;
    this.pairing = pairing;
    this.shows = shows;
    this.cost = cost;
    this.found = found;
    this.single = shows.map((i) => label.alone.has(i));
    this.matching = new Matching(label.bottoms.length, model.strips);
    this.edges = new Float64Array(model.strips + 1);
    this.spare = new Float64Array(model.strips);
    this.fits = new Int32Array(model.strips);
    const wide = (boards: readonly number[]): number[] => [...boards].sort((a, b) => model.width[b]! - model.width[a]!);
    this.wideShows = wide(shows.filter((i) => !label.alone.has(i)));
    this.wideBottoms = wide(label.bottoms);
    this.under = new Float64Array(model.strips + 1);
    this.floors = new Float64Array(model.strips * label.bottoms.length).fill(Number.NaN);
    this.floorsHold = !mayRipThrough(pairing);
    this.placed = new Uint8Array(model.boards.length);
    this.taken = new Uint8Array(model.boards.length);
  }

  next(j: number): boolean {
    const { model, effort } = this.pairing;
    if (++effort.spent > effort.limit) return false;
    if (j === model.strips) {
      this.tell();
      return true;
    }
    const reserve = this.leastReserve(this.under[j]!);
    if (reserve === undefined || !this.canGoOn(j, reserve)) return true;
    // The fits of deeper strips are written over on the way down: keep what is needed of this one.
    const fits = this.single[j] ? 0 : this.fits[j]!;
    let toCome = 0;
    for (let q = j + 1; q < model.strips; q++) toCome += this.leastFloor(q);
    if (this.leastReserve(this.under[j]! + this.leastFloor(j) + toCome) === undefined) return true;
    this.placed[this.shows[j]!] = 1;
    let whole = !this.single[j] || this.put(j, -1, toCome);
    for (let bit = 0; whole && fits >> bit !== 0; bit++) {
      if ((fits >> bit) & 1) whole = this.put(j, bit, toCome);
    }
    this.placed[this.shows[j]!] = 0;
    return whole;
  }

  /** A cheaper plan of this order must have this much reserve; undefined when none can be cheaper. `under`: cost of the underside. */
  private leastReserve(under: number): number | undefined {
    const { model, incumbent } = this.pairing;
    const room = incumbent.value - model.prices.alike - this.cost - under;
    if (room <= 0) return undefined;
    const price = model.prices.of.reserve;
    return price === 0 ? 0 : Math.max(0, model.problem.settings.reserveCap - room / price);
  }

  /** Lays a bottom board (by its bit; -1: none) into strip j and goes on; the strips to come cost `toCome` by their underside. */
  private put(j: number, bit: number, toCome: number): boolean {
    const { model, label } = this.pairing;
    const show = this.shows[j]!;
    const bottom = bit < 0 ? -1 : label.bottoms[bit]!;
    const width = bottom < 0 ? model.width[show]! : Math.min(model.width[show]!, model.width[bottom]!);
    if (bottom >= 0) this.taken[bottom] = 1;
    const right = this.widestRest();
    this.under[j + 1] = this.under[j]! + (bit < 0 ? 0 : this.floor(j, bit, this.edges[j]! - model.half, right));
    const reserve = this.leastReserve(this.under[j + 1]! + toCome);
    this.bottoms[j] = bottom;
    this.edges[j + 1] = this.edges[j]! + width;
    this.spare[j] = model.thick[show]! + (bottom < 0 ? 0 : model.thick[bottom]!) - model.base;
    const inner = Math.max(0, this.edges[j]! - model.half, right - model.half);
    const wide = this.edges[j + 1]! + right >= 2 * model.half - 1e-9;
    const thick = reserve !== undefined && this.spare[j]! + model.slope * inner >= reserve - 1e-9;
    const whole = wide && thick ? this.next(j + 1) : true;
    if (bottom >= 0) this.taken[bottom] = 0;
    return whole;
  }

  /** Least cost of the underside of strip q with any bottom board that fits, wherever the strip may come to lie. */
  private leastFloor(q: number): number {
    if (this.single[q] || !this.floorsHold) return 0;
    const { model, label, reach } = this.pairing;
    const count = label.bottoms.length;
    let least = Number.POSITIVE_INFINITY;
    for (let bit = 0; bit < count && least > 0; bit++) {
      if (!((this.fits[q]! >> bit) & 1)) continue;
      const at = q * count + bit;
      if (Number.isNaN(this.floors[at]!)) {
        let [before, after] = [0, 0];
        this.shows.forEach((show, k) => {
          if (k < q) before += reach[show]!;
          if (k > q) after += reach[show]!;
        });
        this.floors[at] = this.floor(q, bit, before - model.half, after);
      }
      least = Math.min(least, this.floors[at]!);
    }
    return least;
  }

  /** Least cost of the underside of strip q, its left edge at most at `last`, at most `right` mm of strips on its right. */
  private floor(q: number, bit: number, last: number, right: number): number {
    if (!this.floorsHold) return 0;
    const { model, label } = this.pairing;
    const show = this.shows[q]!;
    const bottom = label.bottoms[bit]!;
    const width = Math.min(model.width[show]!, model.width[bottom]!);
    const first = Math.min(last, model.half - width - right);
    const outer = q === 0 || q === model.strips - 1;
    const top = model.thick[show]! - model.problem.settings.cleanUp / 2;
    return undersideFloor(model, bottom, top, { width, first, last, outer });
  }

  /** mm that the strips not yet paired can cover at most: wide boards on wide boards. */
  private widestRest(): number {
    const { width } = this.pairing.model;
    let [sum, at] = [0, 0];
    for (const show of this.wideShows) {
      if (this.placed[show]) continue;
      while (this.taken[this.wideBottoms[at]!]) at++;
      sum += Math.min(width[show]!, width[this.wideBottoms[at++]!]!);
    }
    for (const show of this.pairing.label.alone) if (!this.placed[show]) sum += width[show]!;
    return sum;
  }

  /** Every strip from j on can have a bottom board of its own that is thick and wide enough, as far as can be told. */
  private canGoOn(j: number, reserve: number): boolean {
    const { model, reach } = this.pairing;
    const { half } = model;
    let rest = 0;
    for (let q = j; q < model.strips; q++) rest += reach[this.shows[q]!]!;
    const loss = this.edges[j]! + rest - 2 * half;
    if (loss < -1e-9) return false;
    let left = this.edges[j]!;
    this.matching.start(j);
    for (let q = j; q < model.strips; q++) {
      const wide = reach[this.shows[q]!]!;
      rest -= wide;
      const inner = Math.max(0, left - half, rest - half);
      left += wide;
      if (!this.canStand(q, inner, reserve, loss)) return false;
    }
    return true;
  }

  /** Strip q can have a bottom board of its own, its inner edge that far from the center line. */
  private canStand(q: number, inner: number, reserve: number, loss: number): boolean {
    const { model, label, reach } = this.pairing;
    const { thick, width, uses } = model;
    const show = this.shows[q]!;
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

  private tell(): void {
    const { model, incumbent } = this.pairing;
    if (this.edges[model.strips]! < 2 * model.half - 1e-9) return;
    const reserve = mostReserve(model, { edges: this.edges, spare: this.spare });
    const cap = model.problem.settings.reserveCap;
    const missing = model.prices.counted('reserve', cap - Math.min(cap, reserve));
    const most = incumbent.value - model.prices.alike - this.cost - model.prices.of.reserve * missing;
    if (reserve >= -1e-9 && most > 0) this.found([...this.bottoms], most);
  }
}
