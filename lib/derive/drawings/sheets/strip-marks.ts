import type { Entity } from '../../../drawing/drawing.ts';
import { roomFor } from '../../../drawing/fit-text.ts';
import { LAYERS } from '../../../drawing/layers.ts';
import type { Style } from '../../../drawing/style.ts';
import type { Mm } from '../../../units/mm.ts';
import type { TopStrip } from './half-top.ts';

/** Over the show face, beside a mark, and from line to line in capital heights; paper mm; our convention. */
const OVER: Mm = 2;
const PAD: Mm = 1.5;
const LEADING = 1.6;

type Way = 'lines' | 'upright' | 'none';

/** Below each other where they fit between the joints, else upright, else not at all: then the strips are thinner than letters. */
function wayOf({ marks, width }: TopStrip, { scale, textHeight }: Style): Way {
  const room = width / scale - 2 * PAD;
  if (Math.max(...marks.map((mark) => roomFor(mark, textHeight))) <= room) return 'lines';
  return textHeight <= room ? 'upright' : 'none';
}

const together = ({ marks }: TopStrip): string => marks.join(', ');

/** Room for the upright text of a cover, to its left and to its right; paper mm; our convention. */
const TEXT: readonly [Mm, Mm] = [4.5, 1];

/** In the middle of a strip, or to one side of it where the text of a cover stands. */
function placeOf(strip: TopStrip, half: Mm, taken: Mm | undefined, scale: number): Mm {
  if (taken === undefined) return strip.middle;
  const isFree = (x: Mm): boolean => x + half < taken - TEXT[0] * scale || x - half > taken + TEXT[1] * scale;
  return [0, 0.25, -0.25, 0.35, -0.35].map((share) => strip.middle + share * strip.width).find(isFree) ?? strip.middle;
}

/** The marks of the boards of a strip over its show face, which lies at 0, clear of the text of a cover at `taken`; model mm. */
export function stripMarks(strip: TopStrip, taken: Mm | undefined, style: Style): Entity[] {
  const { scale, textHeight } = style;
  const way = wayOf(strip, style);
  const half = way === 'upright' ? textHeight / 2 : Math.max(...strip.marks.map((m) => roomFor(m, textHeight))) / 2;
  const x = placeOf(strip, (half + PAD / 2) * scale, taken, scale);
  const text = (content: string, up: Mm, upright: boolean): Entity => ({
    kind: 'text',
    layer: LAYERS.TEXT,
    text: content,
    at: [x, up * scale],
    height: textHeight,
    ...(upright ? { rotation: 90, align: 'left', valign: 'middle' } : { align: 'center' }),
  });
  if (way === 'none') return [];
  if (way === 'upright') return [text(together(strip), OVER, true)];
  return strip.marks.map((mark, k) => text(mark, OVER + (strip.marks.length - 1 - k) * LEADING * textHeight, false));
}

/** How far the marks of all strips reach over the show face, model mm. */
export function marksHeight(strips: readonly TopStrip[], style: Style): Mm {
  const { scale, textHeight } = style;
  const heights = strips.map((strip) => {
    const way = wayOf(strip, style);
    if (way === 'none') return 0;
    if (way === 'upright') return OVER + roomFor(together(strip), textHeight) + PAD;
    return OVER + strip.marks.length * LEADING * textHeight;
  });
  return Math.max(0, ...heights) * scale;
}
