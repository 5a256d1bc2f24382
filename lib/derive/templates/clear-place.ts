import type { Pt, Text } from '../../drawing/entity.ts';
import { LAYERS } from '../../drawing/layers.ts';
import { type Style, sizes } from '../../drawing/style.ts';
import { textCorners } from '../../drawing/text-size.ts';
import { facetOutline, type Outline } from '../../geometry/outline.ts';
import { grown, isInside, placesAround, type Room } from './room.ts';
import type { Sheet } from './sheet.ts';

/** How far from where they belong letters and other marks may go to find room, mm; our convention. */
const LETTER_REACH = 30;
const MARK_REACH = 150;

/** The place nearest to a wanted one at which a room is clear; inside an outline when one is given. */
export function clearPlace(
  sheet: Sheet,
  wanted: Pt,
  roomAt: (place: Pt) => Room,
  within?: readonly Pt[],
): Pt | undefined {
  for (const place of placesAround(wanted, within ? MARK_REACH : LETTER_REACH)) {
    const room = roomAt(place);
    if (within && !room.every((corner) => isInside(corner, within))) continue;
    if (sheet.isClear(room)) return place;
  }
  return undefined;
}

/** One line of text with its middle at a place. */
export const centered = (text: string, at: Pt, height: number): Text => ({
  kind: 'text',
  layer: LAYERS.TEXT,
  text,
  at,
  height,
  align: 'center',
  valign: 'middle',
});

/** The room of a text with some gap around it. */
export const roomOfText = (text: Text, style: Style): Room =>
  grown(textCorners(text, style.scale), sizes(style).textGap / 2);

/** The corners of an outline, arcs as chords. */
export const cornersOf = (outline: Outline): Pt[] => facetOutline(outline).map((p) => [p.x, p.y]);

/** The middle of the box around an outline. */
export const middleOf = (outline: Outline): Pt => [halfway(outline.map((p) => p.x)), halfway(outline.map((p) => p.y))];

const halfway = (values: readonly number[]): number => (Math.min(...values) + Math.max(...values)) / 2;
