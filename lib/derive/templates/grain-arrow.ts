import type { Mark, Pt } from '../../drawing/entity.ts';
import { LAYERS } from '../../drawing/layers.ts';
import { sizes } from '../../drawing/style.ts';
import { textWidth } from '../../drawing/text-size.ts';
import type { Outline } from '../../geometry/outline.ts';
import type { Part } from '../../model/part.ts';
import { clearPlace, cornersOf, middleOf } from './clear-place.ts';
import type { Room } from './room.ts';
import type { Sheet } from './sheet.ts';

/** How long the arrow may be, the longest that finds room, mm; our convention. */
const LENGTHS = [60, 40, 25] as const;

/** From the middle of the face to where the arrow is wanted, mm: on the other hand of the mark; our convention. */
const BESIDE = 60;

const WORD = 'grain';

/** A point of the arrow: along it from its middle, and aside to where its word stands. */
type PointOf = (along: number, aside: number) => Pt;

/** A double arrow along the grain with the word over it; nothing on a face too crowded for the shortest. */
export function grainArrow(sheet: Sheet, { finished }: Part, outline: Outline): Mark[] {
  const within = cornersOf(outline);
  const ys = outline.map((p) => p.y);
  const upright = Math.abs(finished.length - (Math.max(...ys) - Math.min(...ys))) < 1e-6;
  const pointOf = ([x, y]: Pt): PointOf =>
    upright ? (along, aside) => [x - aside, y + along] : (along, aside) => [x + along, y + aside];
  const [x, y] = middleOf(outline);
  for (const length of LENGTHS) {
    const place = clearPlace(sheet, [x - BESIDE, y], (at) => roomOfArrow(sheet, pointOf(at), length), within);
    if (place) return arrow(sheet, pointOf(place), length, upright ? 90 : 0);
  }
  return [];
}

function roomOfArrow({ style }: Sheet, point: PointOf, length: number): Room {
  const { text, textGap } = sizes(style);
  const half = Math.max(length, textWidth(WORD, text)) / 2 + textGap;
  const over = 1.5 * text + 2 * textGap;
  return [point(-half, -textGap), point(half, -textGap), point(half, over), point(-half, over)];
}

function arrow({ style }: Sheet, point: PointOf, length: number, rotation: number): Mark[] {
  const { text: size, textGap } = sizes(style);
  const tip = length / 2;
  const points = [point(size - tip, size / 2), point(-tip, 0), point(tip, 0), point(tip - size, size / 2)];
  const at = point(0, size / 2 + textGap);
  return [
    { kind: 'poly', layer: LAYERS.REFERENCE, points, closed: false },
    { kind: 'text', layer: LAYERS.REFERENCE, text: WORD, at, height: style.textHeight, rotation, align: 'center' },
  ];
}
