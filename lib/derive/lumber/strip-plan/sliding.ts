import type { Label } from './label.ts';
import type { StripModel } from './strip-model.ts';

/** mm, at least and at most. */
export type Extent = readonly [least: number, most: number];

/** Where a row may come to lie: in the middle, off it because there a strip is too thin for the reserve that counts, or either. */
export type RowSlide = 'middle' | 'off' | 'any';

/** A strip that may still slide and change its width. */
export interface Sliding {
  /** Counted from the left, the first is 0. */
  readonly strip: number;
  /** mm as its boards allow, before anything is ripped off the row. */
  readonly width: Extent;
  /** mm that the strips on its left and on its right cover together. */
  readonly before: Extent;
  readonly after: Extent;
  /** mm to the right that the row may lie off the middle; undefined: wherever it covers the blank. */
  readonly shift: Extent | undefined;
}

/** mm from the center line of the left edge of a strip, the row in the middle and not ripped. */
export const middleLeft = ({ width, before, after }: Sliding): Extent => [
  (before[0] - width[1] - after[1]) / 2,
  (before[1] - width[0] - after[0]) / 2,
];

/** A part that a strip has in any case, its left edge between two places, `rip` mm of its board left of it. */
export interface StripPart {
  readonly width: number;
  readonly first: number;
  readonly last: number;
  readonly rip: number;
  /** mm from the center line: beyond these, the strip may have been ripped away. */
  readonly from: number;
  readonly to: number;
}

/** The seams of a strip as far as its boards allow, and held where strips beyond them are down to the least width. */
function seamsOf(model: StripModel, strip: Sliding) {
  const { half, strips, problem } = model;
  const { before, after, width } = strip;
  const narrow = problem.settings.leastWidth;
  const [from, to] = [-half + strip.strip * narrow, half - (strips - 1 - strip.strip) * narrow];
  let left: Extent = [half - after[1] - width[1], before[1] - half];
  let right: Extent = [half - after[1], before[1] + width[1] - half];
  if (strip.shift !== undefined) {
    const [first, last] = middleLeft(strip);
    const middle = [first + strip.shift[0], last + strip.shift[1]] as const;
    left = [Math.max(left[0], middle[0]), Math.min(left[1], middle[1])];
    right = [Math.max(right[0], middle[0] + width[0]), Math.min(right[1], middle[1] + width[1])];
  }
  const held = left[0] < from || right[1] > to;
  const clamp = ([low, high]: Extent, least: number, most: number): Extent => [
    Math.min(most, Math.max(least, low)),
    Math.min(most, Math.max(least, high)),
  ];
  return { left: clamp(left, from, to - narrow), right: clamp(right, from + narrow, to), from, to, held };
}

/**
 * Where a strip may lie with a board `broad` mm wide: right of the center line the board is ripped on the right, left of it on
 * the left, over it on both sides alike.
 */
export function placesOf(model: StripModel, strip: Sliding, broad: number): readonly StripPart[] {
  const { left, right, from, to, held } = seamsOf(model, strip);
  const [narrowest, widest] = strip.width;
  const parts: StripPart[] = [];
  const add = (width: number, first: number, last: number, rip: number): void => {
    if (first <= last + 1e-9) parts.push({ width, first, last, rip, from, to });
  };
  add(narrowest, Math.max(0, left[0]), left[1], 0);
  add(narrowest, right[0] - narrowest, Math.min(0, right[1]) - narrowest, broad - narrowest);
  if (left[0] < 0 && right[1] > 0) {
    const width = held ? Math.min(model.problem.settings.leastWidth, narrowest) : narrowest;
    const middle: Extent = [(left[0] + right[0]) / 2, (left[1] + right[1]) / 2];
    const first = Math.max(-widest / 2, middle[0]) - width / 2;
    add(width, first, Math.min(widest / 2, middle[1]) - width / 2, (broad - width) / 2);
  }
  return parts;
}

/** mm of its inner edge from the center line. */
export function innerOf(model: StripModel, strip: Sliding): Extent {
  const { left, right } = seamsOf(model, strip);
  const most = Math.max(0, left[1], -right[0]);
  return [Math.max(0, left[0], -right[1]), most];
}

const total = (widths: readonly Extent[]): Extent => [
  widths.reduce((sum, [least]) => sum + least, 0),
  widths.reduce((sum, [, most]) => sum + most, 0),
];

/** The strips of an order of show boards, their bottom boards still open. */
export function stripsOf(
  model: StripModel,
  label: Label,
  shows: readonly number[],
  shift: Extent | undefined,
): readonly Sliding[] {
  const bottoms = label.bottoms.map((b) => model.width[b]!);
  const [least, most] = [Math.min(...bottoms), Math.max(...bottoms)];
  const widths = shows.map((i): Extent => {
    const width = model.width[i]!;
    return label.alone.has(i) ? [width, width] : [Math.min(width, least), Math.min(width, most)];
  });
  return widths.map((width, q) => {
    return { strip: q, width, before: total(widths.slice(0, q)), after: total(widths.slice(q + 1)), shift };
  });
}
