import { FlipCosts, sideCosts } from './flip-costs.ts';
import type { Effort, Incumbent } from './incumbent.ts';
import type { Label } from './label.ts';
import { Matching } from './matching.ts';
import type { Sliding } from './sliding.ts';
import type { StripModel } from './strip-model.ts';
import { toneToCome } from './tone-to-come.ts';

/** An order of the show boards of a label, left to right. */
export interface ShowOrder {
  readonly shows: readonly number[];
  /** What its boards and tones cost, and with its flips at least. */
  readonly boards: number;
  readonly cost: number;
}

/**
 * The orders of the show boards of a label that may lead to a plan cheaper than the incumbent, starting with a given few. A
 * partial order is given up when its tones, its flips or its stacks cost too much already. Undefined when the effort
 * ran out before the end.
 */
export function showOrders(
  model: StripModel,
  label: Label,
  first: readonly number[],
  incumbent: Incumbent,
  effort: Effort,
): readonly ShowOrder[] | undefined {
  const search = new OrderSearch(model, label, incumbent, effort);
  return search.run(first) ? search.found : undefined;
}

/** Mm that a strip with each show board can be wide: no wider than the widest bottom board, unless it is a strip alone. */
export function reachOf(model: StripModel, label: Label): Float64Array {
  const widest = Math.max(0, ...label.bottoms.map((b) => model.width[b]!));
  return model.width.map((w, i) => (label.alone.has(i) ? w : Math.min(w, widest)));
}

class OrderSearch {
  readonly found: ShowOrder[] = [];
  private readonly model: StripModel;
  private readonly label: Label;
  private readonly incumbent: Incumbent;
  private readonly effort: Effort;
  private readonly order: number[] = [];
  private readonly single: boolean[] = [];
  private readonly used: Uint8Array;
  private readonly flips: FlipCosts;
  private readonly fits: Int32Array;
  private readonly matching: Matching;
  /** mm that the narrowest bottom board leaves of a strip, and that a strip with a show board can be wide at most. */
  private readonly narrowest: number;
  private readonly reach: Float64Array;
  /** mm of all strips side by side at most, and how much of it narrower bottom boards may take. */
  private readonly broad: number;
  private readonly loss: number;

  constructor(model: StripModel, label: Label, incumbent: Incumbent, effort: Effort) {
    this.model = model;
    this.label = label;
    this.incumbent = incumbent;
    this.effort = effort;
    this.used = new Uint8Array(model.boards.length);
    this.flips = new FlipCosts(model);
    this.narrowest = Math.min(...label.bottoms.map((b) => model.width[b]!));
    this.fits = new Int32Array(model.strips);
    this.matching = new Matching(label.bottoms.length, model.strips);
    this.matching.start(0);
    this.reach = reachOf(model, label);
    this.broad = label.shows.reduce((sum, i) => sum + this.reach[i]!, 0);
    this.loss = this.broad - 2 * model.half;
  }

  run(first: readonly number[]): boolean {
    let [width, tone] = [0, 0];
    for (const [j, i] of first.entries()) {
      const step = this.toneStep(j, i);
      if (!this.place(j, i, width, tone + step)) return true;
      this.used[i] = 1;
      width += this.reach[i]!;
      tone += step;
    }
    return this.next(first.length, width, tone);
  }

  /** Places the show boards from strip j on; `width` mm and `tone` cost so far. */
  private next(j: number, width: number, tone: number): boolean {
    if (j === this.model.strips) return this.finish(tone);
    for (const i of this.label.shows) {
      if (this.used[i]) continue;
      if (++this.effort.spent > this.effort.limit) return false;
      const step = this.toneStep(j, i);
      if (!this.place(j, i, width, tone + step)) continue;
      this.used[i] = 1;
      const whole = this.next(j + 1, width + this.reach[i]!, tone + step);
      this.used[i] = 0;
      if (!whole) return false;
    }
    return true;
  }

  private toneStep(j: number, i: number): number {
    const { tone, prices } = this.model;
    return j === 0 ? 0 : prices.of.tone * Math.abs(tone[i]! - tone[this.order[j - 1]!]!);
  }

  /** Puts a board into strip j unless that leads nowhere. */
  private place(j: number, i: number, width: number, tone: number): boolean {
    const { model, label, incumbent } = this;
    if (!((model.uses[i]!.strips >> j) & 1)) return false;
    if (j === model.strips - 1 && model.mirrors && this.order[0]! > i) return false;
    this.order[j] = i;
    this.single[j] = label.alone.has(i);
    const toCome = model.prices.of.tone * toneToCome(model.tone, label.shows, this.used, i);
    const most = incumbent.value - model.prices.alike - label.cost - tone - toCome;
    if (most <= 0) return false;
    const room = most - this.flipCost(j, i, width);
    if (room <= 0) return false;
    return this.canStand(j, i, width, this.leastReserve(room));
  }

  /** A plan that costs less than the room left must have this much reserve. */
  private leastReserve(room: number): number {
    const price = this.model.prices.of.reserve;
    return price === 0 ? 0 : Math.max(0, this.model.problem.settings.reserveCap - room / price);
  }

  /** Least extra cost of flips up to strip j, which has at most `before` mm of strips on its left. */
  private flipCost(j: number, i: number, before: number): number {
    const { model } = this;
    const widest = this.reach[i]!;
    const narrowest = this.single[j] ? widest : Math.min(widest, this.narrowest);
    const strip: Sliding = {
      strip: j,
      width: [narrowest, widest],
      before: [0, before],
      after: [0, this.broad - before - widest],
      total: [0, this.broad],
      shift: undefined,
    };
    const [up, down] = sideCosts(model, i, strip);
    return this.flips.lay(j, up, down);
  }

  /**
   * Strip j can be thick enough, and with it all strips before. Its inner edge is at most as far out as the show boards on its
   * left, or those on its right, reach beyond the half of the blank.
   */
  private canStand(j: number, i: number, width: number, reserve: number): boolean {
    const { model, label } = this;
    const right = this.broad - width - this.reach[i]!;
    const inner = Math.max(0, width - model.half, right - model.half);
    const want = model.base - model.slope * inner + reserve - model.thick[i]! - 1e-9;
    let fits = 0;
    if (!this.single[j]) {
      for (let bit = 0; bit < label.bottoms.length; bit++) {
        const b = label.bottoms[bit]!;
        const wide = this.reach[i]! - model.width[b]! <= this.loss + 1e-9;
        if (wide && model.thick[b]! >= want && (model.uses[b]!.strips >> j) & 1) fits |= 1 << bit;
      }
    } else if (want > 0) return false;
    this.fits[j] = fits;
    return this.matching.add(this.fits, j, this.single[j]!);
  }

  private finish(tone: number): boolean {
    const boards = this.label.cost + tone;
    this.found.push({ shows: [...this.order], boards, cost: boards + this.flips.least(this.model.strips) });
    return true;
  }
}
