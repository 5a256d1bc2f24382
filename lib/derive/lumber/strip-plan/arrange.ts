import { type Judged, judge } from './judge.ts';
import type { Label } from './label.ts';
import { Matching } from './matching.ts';
import { type Pairing, pairBottoms } from './pair-bottoms.ts';
import type { StripModel } from './strip-model.ts';

/** The best plan so far, shared by all parts of a search. */
export interface Incumbent {
  /** Infinity before there is one; only what is cheaper is looked for. */
  value: number;
  best?: Judged;
}

/** Work done and allowed. */
export interface Effort {
  spent: number;
  limit: number;
}

/**
 * Looks for a plan cheaper than the incumbent among all orders and pairings of a label, show boards left to right, starting
 * with a given few. A partial order is given up when its tones, its flips or its stacks cost too much already. Answers
 * false when the effort ran out before the end.
 */
export function arrange(
  model: StripModel,
  label: Label,
  first: readonly number[],
  incumbent: Incumbent,
  effort: Effort,
): boolean {
  return new Arranging(model, label, incumbent, effort).run(first);
}

/** Mm that a strip with each show board can be wide: no wider than the widest bottom board, unless it is a strip alone. */
export function reachOf(model: StripModel, label: Label): Float64Array {
  const widest = Math.max(0, ...label.bottoms.map((b) => model.width[b]!));
  return model.width.map((w, i) => (label.alone.has(i) ? w : Math.min(w, widest)));
}

class Arranging {
  private readonly model: StripModel;
  private readonly label: Label;
  private readonly incumbent: Incumbent;
  private readonly effort: Effort;
  private readonly order: number[] = [];
  private readonly single: boolean[] = [];
  private readonly used: Uint8Array;
  /** Extra cost of the flips so far by the last flip, two numbers a strip. */
  private readonly flips: Float64Array;
  private readonly fits: Int32Array;
  private readonly matching: Matching;
  private readonly pairing: Pairing;
  /** mm that a strip with a show board can be wide at most. */
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
    this.flips = new Float64Array(2 * model.strips);
    this.fits = new Int32Array(model.strips);
    this.matching = new Matching(label.bottoms.length, model.strips);
    this.matching.start(0);
    this.reach = reachOf(model, label);
    this.pairing = { model, label, reach: this.reach, incumbent, effort };
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
    const room = incumbent.value - model.prices.alike - label.cost - tone - this.toneToCome(i) - this.flipCost(j, i);
    if (room <= 0) return false;
    return this.canStand(j, i, width, this.leastReserve(room));
  }

  /** A plan that costs less than the room left must have this much reserve. */
  private leastReserve(room: number): number {
    const price = this.model.prices.of.reserve;
    return price === 0 ? 0 : Math.max(0, this.model.problem.settings.reserveCap - room / price);
  }

  /** Least cost of the tone steps from a board through all boards still to place. */
  private toneToCome(last: number): number {
    const { tone, prices } = this.model;
    let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (const i of this.label.shows) {
      if (this.used[i] || i === last) continue;
      low = Math.min(low, tone[i]!);
      high = Math.max(high, tone[i]!);
    }
    if (high < low) return 0;
    const at = tone[last]!;
    return prices.of.tone * (high - low + Math.min(Math.abs(at - low), Math.abs(at - high)));
  }

  /** Least extra cost of flips up to strip j, over each board lying on its better side. */
  private flipCost(j: number, i: number): number {
    const { showCost, prices } = this.model;
    const [up, down] = [showCost[2 * i]!, showCost[2 * i + 1]!];
    const least = Math.min(up, down);
    const [f, g] = j === 0 ? [0, 0] : [this.flips[2 * j - 2]!, this.flips[2 * j - 1]!];
    const alike = j === 0 ? 0 : prices.of.rings;
    this.flips[2 * j] = Math.min(g, f + alike) + up - least;
    this.flips[2 * j + 1] = Math.min(f, g + alike) + down - least;
    return Math.min(this.flips[2 * j]!, this.flips[2 * j + 1]!);
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
    const { model, label, incumbent } = this;
    const j = model.strips - 1;
    const flips = Math.min(this.flips[2 * j]!, this.flips[2 * j + 1]!);
    return pairBottoms(this.pairing, this.order, label.cost + tone + flips, (bottoms, most) => {
      const judged = judge(model, { shows: [...this.order], bottoms }, most);
      if (judged !== undefined && judged.value < incumbent.value - model.prices.alike) {
        incumbent.value = judged.value;
        incumbent.best = judged;
      }
    });
  }
}
