import type { End, Placement } from './dim.ts';
import type { Pt } from './entity.ts';
import type { Sizes } from './style.ts';

/** Two arrowheads and as much line between them: common practice, no source. */
const ARROWS_NEED = 3;

/** What a dimension line carries, along its length: straight for distances, bent for angles. */
export interface Row {
  /** The stretch that is drawn; 0 is `from` (angles: the start), the measured length is `to` (the end). */
  readonly start: number;
  readonly end: number;
  /** Where over the line the middle of the text is, or the point of the drawing it was moved to. */
  readonly text: number | Pt;
  readonly ends: readonly [End, End];
}

/** Whether lettering of a width stands between the ends of a dimension line. */
export const textFits = (length: number, width: number, size: Sizes): boolean => length >= width + 2 * size.textGap;

/** Whether both arrowheads have room between the ends of a dimension line. */
export const arrowsFit = (length: number, size: Sizes): boolean => length >= ARROWS_NEED * size.arrow;

/** How far past its end the line runs: an outer arrowhead has a tail as long as itself. */
const tail = (end: End, size: Sizes): number => (end === 'out' ? 2 * size.arrow : 0);

/** How far past its end outer lettering begins: clear of the extension line, and of an outer arrowhead's tip. */
const lead = (end: End, size: Sizes): number => size.textGap + (end === 'out' ? size.arrow : 0);

/** How much room lettering outside a dimension line takes up past its end. */
export const outerReach = (length: number, width: number, size: Sizes): number =>
  lead(arrowsFit(length, size) ? 'in' : 'out', size) + width;

/** What goes between the ends of a dimension line and what goes outside, where the maker has not said so. */
export function dimRow(length: number, width: number, size: Sizes, placement: Placement = {}): Row {
  const end: End = arrowsFit(length, size) ? 'in' : 'out';
  const ends = placement.ends ?? [end, end];
  const text = placement.text ?? (textFits(length, width, size) ? 'inside' : 'after');
  const bare = { start: -tail(ends[0], size), end: length + tail(ends[1], size), ends };
  if (text === 'before') {
    const near = -lead(ends[0], size);
    return { ...bare, start: Math.min(bare.start, near - width), text: near - width / 2 };
  }
  if (text === 'after') {
    const near = length + lead(ends[1], size);
    return { ...bare, end: Math.max(bare.end, near + width), text: near + width / 2 };
  }
  return { ...bare, text: text === 'inside' ? length / 2 : text };
}
