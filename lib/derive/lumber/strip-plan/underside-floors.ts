import { sideCosts } from './flip-costs.ts';
import type { Label } from './label.ts';
import { type Extent, placesOf, type Sliding, stripsOf } from './sliding.ts';
import type { StripModel } from './strip-model.ts';
import { bottomLayer, undersideFloor } from './underside-floor.ts';

/** More bottom boards than this, and the strips to come are taken to cost nothing: a number for every set of them is kept. */
const MOST_BOTTOMS = 14;

/** What the underside of an order of show boards costs at least, strip by strip, wherever the strips come to lie. */
export class UndersideFloors {
  private readonly model: StripModel;
  private readonly label: Label;
  private readonly shows: readonly number[];
  private readonly strips: readonly Sliding[];
  /** Least cost of the sides of the show boards from each strip on, by the side of that one. */
  readonly sides: Float64Array;
  /** Strips of two layers, and how many of them come before each strip. */
  private readonly paired: readonly number[];
  private readonly rank: readonly number[];
  /** Bottom boards that fit each strip, as bits. */
  private readonly fits: Int32Array;
  /**
   * Least cost of each strip with each bottom board; and of the strips to come by set of bottom boards taken, whose number tells how
   * many strips of two layers are laid. NaN: not yet asked.
   */
  private readonly wide: Float64Array;
  private readonly rests: Float64Array;

  constructor(model: StripModel, label: Label, shows: readonly number[], shift: Extent | undefined, fits: Int32Array) {
    this.model = model;
    this.label = label;
    this.shows = shows;
    this.fits = fits;
    this.strips = stripsOf(model, label, shows, shift);
    this.sides = this.sidesToCome();
    this.paired = [...shows.keys()].filter((q) => !label.alone.has(shows[q]!));
    this.rank = [...shows.keys(), shows.length].map((q) => this.paired.filter((p) => p < q).length);
    const { length } = label.bottoms;
    this.wide = new Float64Array(shows.length * length).fill(Number.NaN);
    this.rests = new Float64Array(length > MOST_BOTTOMS ? 0 : 2 ** length).fill(Number.NaN);
  }

  /** The bottom board (by its bit) of a strip. */
  bottom(bit: number, strip: Sliding): number {
    const board = this.label.bottoms[bit]!;
    const { model } = this;
    if (model.boards[board]!.defects.length === 0) return 0;
    const places = placesOf(model, strip, model.width[board]!);
    return undersideFloor(model, bottomLayer(model, board, this.shows[strip.strip]!), places);
  }

  /** The strips from q on, the bottom boards of `taken` being used up: the cheapest way to give each one of its own. */
  rest(q: number, taken: number): number {
    return this.rests.length === 0 ? 0 : this.restOf(this.rank[q]!, taken);
  }

  private restOf(rank: number, taken: number): number {
    if (rank === this.paired.length) return 0;
    const known = this.rests[taken]!;
    if (!Number.isNaN(known)) return known;
    const q = this.paired[rank]!;
    const open = this.fits[q]! & ~taken;
    let least = Number.POSITIVE_INFINITY;
    for (let bit = 0; open >> bit !== 0; bit++) {
      if (!((open >> bit) & 1)) continue;
      const floor = this.anywhere(q, bit);
      if (floor < least) least = Math.min(least, floor + this.restOf(rank + 1, taken | (1 << bit)));
    }
    this.rests[taken] = least;
    return least;
  }

  private anywhere(q: number, bit: number): number {
    const { model, shows, label } = this;
    const at = q * label.bottoms.length + bit;
    if (Number.isNaN(this.wide[at]!)) {
      const width = Math.min(model.width[shows[q]!]!, model.width[label.bottoms[bit]!]!);
      this.wide[at] = this.bottom(bit, { ...this.strips[q]!, width: [width, width] });
    }
    return this.wide[at]!;
  }

  private sidesToCome(): Float64Array {
    const { model, shows } = this;
    const costs = new Float64Array(2 * model.strips + 2);
    for (let q = model.strips - 1; q >= 0; q--) {
      const strip = this.strips[q]!;
      const [f, g] = [costs[2 * q + 2]!, costs[2 * q + 3]!];
      const alike = q === model.strips - 1 ? 0 : model.prices.of.rings;
      const [up, down] = sideCosts(model, shows[q]!, strip);
      costs[2 * q] = up + Math.min(g, f + alike);
      costs[2 * q + 1] = down + Math.min(f, g + alike);
    }
    return costs;
  }
}
