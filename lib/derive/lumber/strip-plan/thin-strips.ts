import type { Label } from './label.ts';
import { type Extent, innerOf, middleLeft, type Sliding, stripsOf } from './sliding.ts';
import type { StripModel } from './strip-model.ts';

/** How far a row may have to slide off the middle for a strip that is too thin there: mm to the left and to the right, 0 where it need not. */
export type SlideNeed = Extent;

/**
 * A strip that may keep less reserve than the cap when the row lies in the middle, and how far the row then slides for it: until
 * its inner edge is far enough out, on the side where it lies or, from over the center line, on either. Undefined when the
 * strip is thick enough in the middle.
 */
export function slideNeedOf(model: StripModel, strip: Sliding, spare: number): SlideNeed | undefined {
  const { slope, problem } = model;
  const missing = problem.settings.reserveCap - spare;
  if (innerOf(model, strip)[0] * slope >= missing) return undefined;
  const [first, last] = middleLeft(strip);
  const inner = missing / slope;
  const toLeft = first < 0 ? Math.max(0, last + strip.width[1] + inner) : 0;
  const toRight = last + strip.width[1] > 0 ? Math.max(0, inner - first) : 0;
  return [toLeft, toRight];
}

/** The strips of an order that may be too thin in the middle: with which of the bottom boards that fit, and how far the row slides for them at most. */
export interface ThinStrips {
  /** Bottom boards as bits; 1 for a strip alone. */
  readonly bits: Int32Array;
  readonly needs: readonly SlideNeed[];
}

export function thinStrips(model: StripModel, label: Label, shows: readonly number[], fits: Int32Array): ThinStrips {
  const strips = stripsOf(model, label, shows, [0, 0]);
  const bits = new Int32Array(model.strips);
  const needs = shows.map((show, q): SlideNeed => {
    const bottoms = label.alone.has(show) ? [-1] : label.bottoms;
    let most: SlideNeed = [0, 0];
    bottoms.forEach((b, bit) => {
      if (b >= 0 && !((fits[q]! >> bit) & 1)) return;
      const width = b < 0 ? model.width[show]! : Math.min(model.width[show]!, model.width[b]!);
      const spare = model.thick[show]! + (b < 0 ? 0 : model.thick[b]!) - model.base;
      const found = slideNeedOf(model, { ...strips[q]!, width: [width, width] }, spare);
      if (found === undefined) return;
      bits[q]! |= 1 << bit;
      most = farther(most, found);
    });
    return most;
  });
  return { bits, needs };
}

export const farther = (a: SlideNeed, b: SlideNeed): SlideNeed => [Math.max(a[0], b[0]), Math.max(a[1], b[1])];

/** A row may slide so far that it carries a strip across the center line. */
export const canCross = (model: StripModel, strips: readonly Sliding[]): boolean => {
  const broad = strips.reduce((sum, { width }) => sum + width[1], 0);
  return broad / 2 - model.half >= Math.min(...strips.map(({ width }) => width[0]));
};
