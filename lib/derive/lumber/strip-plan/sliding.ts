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
  /** mm of the whole row. */
  readonly total: Extent;
  /** mm to the right that the row may lie off the middle; undefined: wherever it covers the blank. */
  readonly shift: Extent | undefined;
}

/** Places closer than this are one, mm (rounding). */
const SAME = 1e-9;

/** mm from the center line of the left edge of a strip, the row in the middle and not ripped. */
export const middleLeft = ({ width, before, after, total }: Sliding): Extent => [
  Math.max((before[0] - width[1] - after[1]) / 2, before[0] - total[1] / 2, total[0] / 2 - width[1] - after[1]),
  Math.min((before[1] - width[0] - after[0]) / 2, before[1] - total[0] / 2, total[1] / 2 - width[0] - after[0]),
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

const clamp = ([low, high]: Extent, least: number, most: number): Extent => [
  Math.min(most, Math.max(least, low)),
  Math.min(most, Math.max(least, high)),
];

/** The seams of a strip as far as its boards allow, and held where strips beyond them are down to the least width. */
function seamsOf(model: StripModel, strip: Sliding) {
  const { half, strips, problem } = model;
  const { before, after, width, total } = strip;
  const narrow = problem.settings.leastWidth;
  const [from, to] = [-half + strip.strip * narrow, half - (strips - 1 - strip.strip) * narrow];
  let left: Extent = [half - Math.min(after[1] + width[1], total[1] - before[0]), before[1] - half];
  let right: Extent = [half - after[1], Math.min(before[1] + width[1], total[1] - after[0]) - half];
  if (strip.shift !== undefined) {
    const [first, last] = middleLeft(strip);
    const middle = [first + strip.shift[0], last + strip.shift[1]] as const;
    left = [Math.max(left[0], middle[0]), Math.min(left[1], middle[1])];
    right = [Math.max(right[0], middle[0] + width[0]), Math.min(right[1], middle[1] + width[1])];
  }
  const held = left[0] < from || right[1] > to;
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
  const [leftmost, rightmost] = [Math.max(0, left[0]), Math.min(0, right[1]) - narrowest];
  if (leftmost <= left[1] + SAME) parts.push({ width: narrowest, first: leftmost, last: left[1], rip: 0, from, to });
  const inner = right[0] - narrowest;
  if (inner <= rightmost + SAME) {
    parts.push({ width: narrowest, first: inner, last: rightmost, rip: broad - narrowest, from, to });
  }
  if (left[0] >= 0 || right[1] <= 0) return parts;
  const width = held ? Math.min(model.problem.settings.leastWidth, narrowest) : narrowest;
  const first = Math.max(-widest, left[0] + right[0]) / 2 - width / 2;
  const last = Math.min(widest, left[1] + right[1]) / 2 - width / 2;
  if (first <= last + SAME) parts.push({ width, first, last, rip: (broad - width) / 2, from, to });
  return parts;
}

/** mm of its inner edge from the center line. */
export function innerOf(model: StripModel, strip: Sliding): Extent {
  const { left, right } = seamsOf(model, strip);
  const most = Math.max(0, left[1], -right[0]);
  return [Math.max(0, left[0], -right[1]), most];
}

/** mm that show boards and bottom boards in pairs cover together: wide boards on narrow boards, and wide boards on wide ones. */
export function pairedWidth(shows: readonly number[], bottoms: readonly number[]): Extent {
  const falling = (widths: readonly number[]): number[] => [...widths].sort((a, b) => b - a);
  const [wide, below] = [falling(shows), falling(bottoms)];
  const together = (of: readonly number[]): number => wide.reduce((sum, width, k) => sum + Math.min(width, of[k]!), 0);
  return [together(below.toReversed()), together(below)];
}

const sumOf = (widths: readonly Extent[]): Extent => [
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
  const widthOf = (i: number): number => model.width[i]!;
  const bottoms = label.bottoms.map(widthOf);
  const [least, most] = [Math.min(...bottoms), Math.max(...bottoms)];
  const widths = shows.map((i): Extent => {
    const width = widthOf(i);
    return label.alone.has(i) ? [width, width] : [Math.min(width, least), Math.min(width, most)];
  });
  const alone = [...label.alone].reduce((sum, i) => sum + widthOf(i), 0);
  const paired = pairedWidth(shows.filter((i) => !label.alone.has(i)).map(widthOf), bottoms);
  const total: Extent = [alone + paired[0], alone + paired[1]];
  return widths.map((width, q) => {
    return { strip: q, width, before: sumOf(widths.slice(0, q)), after: sumOf(widths.slice(q + 1)), total, shift };
  });
}
