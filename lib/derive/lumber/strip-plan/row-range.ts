import type { Label } from './label.ts';
import { type Extent, innerOf, type RowSlide, type Sliding, stripsOf } from './sliding.ts';
import type { StripModel } from './strip-model.ts';
import { canCross, farther, type SlideNeed, slideNeedOf, type ThinStrips, thinStrips } from './thin-strips.ts';

const MIDDLE: Extent = [0, 0];

/**
 * Where the row of an order may lie while its strips are paired from the left. In the middle, every strip must be thick enough
 * for the reserve that counts; off it, some strip must be too thin in the middle, and the row slides no farther than it asks.
 */
export class RowRange {
  private readonly model: StripModel;
  private readonly row: RowSlide;
  private readonly thin: ThinStrips;
  private readonly alone: readonly boolean[];
  /** The row may slide so far that a strip changes sides: then nothing is known of it. */
  private readonly crosses: boolean;
  /** How far the row slides for the strips laid before each; undefined when none of them is too thin. */
  private readonly needs: (SlideNeed | undefined)[] = [undefined];

  /** `fits`: the bottom boards that may lie in each strip, as bits. */
  constructor(model: StripModel, label: Label, shows: readonly number[], row: RowSlide, fits: Int32Array) {
    this.model = model;
    this.row = row;
    this.alone = shows.map((i) => label.alone.has(i));
    this.thin = thinStrips(model, label, shows, fits);
    this.crosses = canCross(model, stripsOf(model, label, shows, undefined));
  }

  /** Lays strip j after those before it, the row in the middle. False when the row cannot lie there. */
  lay(j: number, strip: Sliding, spare: number): boolean {
    const { model, row } = this;
    const middle = { ...strip, shift: MIDDLE };
    if (row === 'middle') {
      return spare + model.slope * innerOf(model, middle)[1] >= model.problem.settings.reserveCap - ROUNDING;
    }
    if (row === 'any') return true;
    const before = this.needs[j];
    const own = slideNeedOf(model, middle, spare);
    this.needs[j + 1] = before && own ? farther(before, own) : (before ?? own);
    return true;
  }

  /** mm to the right that the row may lie off the middle, the strips before j being laid with the bottom boards of `taken`. */
  shift(j: number, taken: number): Extent | undefined {
    if (this.row === 'middle') return MIDDLE;
    if (this.row === 'any' || this.crosses) return undefined;
    let most: SlideNeed = this.needs[j] ?? MIDDLE;
    for (let q = j; q < this.model.strips; q++) if (this.mayBeThin(q, taken)) most = farther(most, this.thin.needs[q]!);
    return [-most[0], most[1]];
  }

  /** A row lies off the middle only where a strip is too thin for that. */
  isPossible(j: number, taken: number): boolean {
    if (this.row !== 'off' || this.needs[j] !== undefined) return true;
    for (let q = j; q < this.model.strips; q++) if (this.mayBeThin(q, taken)) return true;
    return false;
  }

  private mayBeThin(q: number, taken: number): boolean {
    const bits = this.thin.bits[q]!;
    return (this.alone[q] ? bits : bits & ~taken) !== 0;
  }
}

/** Less reserve than this below the cap is rounding, mm. */
const ROUNDING = 1e-8;
