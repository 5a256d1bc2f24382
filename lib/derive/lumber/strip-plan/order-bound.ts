import { FlipCosts } from './flip-costs.ts';
import type { Label } from './label.ts';
import type { StripModel } from './strip-model.ts';
import { toneToCome } from './tone-to-come.ts';

/**
 * The least that the order of a set of show boards costs: tone steps, flips beyond each board's better side, and reserve missing
 * because a strip lies too far in. Below each show board lies the thickest and widest of all other boards, so the bound holds
 * for every label with these show boards. Answers at most `enough`, and the boards placed on the way.
 */
export function orderBound(model: StripModel, label: Label, enough: number): { cost: number; placed: number } {
  const bound = new OrderBound(model, label, enough);
  bound.place(0, 0, 0, Number.POSITIVE_INFINITY);
  return { cost: bound.least, placed: bound.placed };
}

class OrderBound {
  least: number;
  placed = 0;
  private readonly model: StripModel;
  private readonly shows: readonly number[];
  private readonly used: Uint8Array;
  private readonly order: Int32Array;
  private readonly flips: FlipCosts;
  /** mm that a strip can be wide, and mm of its stack beyond the wedge on the center line, at most; by show board. */
  private readonly reach: Float64Array;
  private readonly spare: Float64Array;
  private readonly broad: number;
  private readonly steps: Float64Array;

  constructor(model: StripModel, { shows, alone }: Label, enough: number) {
    this.model = model;
    this.shows = shows;
    this.least = enough;
    this.used = new Uint8Array(model.boards.length);
    this.order = new Int32Array(model.strips);
    this.flips = new FlipCosts(model);
    this.steps = model.tone.map((tone) => tone * model.prices.of.tone);
    const among = new Set(shows);
    let [thick, wide] = [0, 0];
    for (let i = 0; i < model.boards.length; i++) {
      if (among.has(i) || !model.uses[i]!.bottom) continue;
      thick = Math.max(thick, model.thick[i]!);
      wide = Math.max(wide, model.width[i]!);
    }
    this.reach = model.width.map((w, i) => (alone.has(i) ? w : Math.min(w, wide)));
    this.spare = model.thick.map((t, i) => (alone.has(i) ? t : t + thick) - model.base);
    this.broad = shows.reduce((sum, i) => sum + this.reach[i]!, 0);
  }

  /** Places all show boards from strip j on: `width` mm and `tone` cost so far, the least reserve so far. */
  place(j: number, width: number, tone: number, reserve: number): void {
    const { model } = this;
    if (j === model.strips) {
      this.least = Math.min(this.least, tone + this.flips.least(j) + this.missing(reserve));
      return;
    }
    for (const i of this.shows) {
      if (this.used[i] || !((model.uses[i]!.strips >> j) & 1)) continue;
      if (j === model.strips - 1 && model.mirrors && this.order[0]! > i) continue;
      const inner = Math.max(0, width - model.half, this.broad - width - this.reach[i]! - model.half);
      const left = Math.min(reserve, this.spare[i]! + model.slope * inner);
      if (left < -1e-9) continue;
      const step = j === 0 ? 0 : Math.abs(this.steps[i]! - this.steps[this.order[j - 1]!]!);
      this.placed++;
      this.flip(j, i);
      this.used[i] = 1;
      const cost =
        tone + step + toneToCome(this.steps, this.shows, this.used, i) + this.flips.least(j + 1) + this.missing(left);
      if (cost < this.least) {
        this.order[j] = i;
        this.place(j + 1, width + this.reach[i]!, tone + step, left);
      }
      this.used[i] = 0;
    }
  }

  private missing(reserve: number): number {
    const { prices, problem } = this.model;
    return reserve >= problem.settings.reserveCap ? 0 : prices.of.reserve * (problem.settings.reserveCap - reserve);
  }

  private flip(j: number, i: number): void {
    const { showCost } = this.model;
    const [up, down] = [showCost[2 * i]!, showCost[2 * i + 1]!];
    const least = Math.min(up, down);
    this.flips.lay(j, up - least, down - least);
  }
}
