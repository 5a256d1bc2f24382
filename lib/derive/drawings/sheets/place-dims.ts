import { chain } from '../../../drawing/chain.ts';
import type { Dim } from '../../../drawing/dim.ts';
import type { Pt } from '../../../drawing/entity.ts';
import { roomFor } from '../../../drawing/fit-text.ts';
import { levelAt, levelDim, SIDES } from '../../../drawing/stack.ts';
import { type Style, sizes } from '../../../drawing/style.ts';
import { textWidth } from '../../../drawing/text-size.ts';
import type { Mm } from '../../../units/mm.ts';
import type { SeatMap } from '../../checks/seat-map.ts';
import type { SeatStretch } from '../../checks/seat-stretch.ts';
import { sayDim } from './say-length.ts';
import { CHAIR_REACH } from './seat-marks.ts';

/** The first line of dimensions stands so much nearer to the chairs than to wood, paper mm; our convention. */
const NEARER: Mm = 6;

/** Nearer than this is the same place, mm. */
const SAME: Mm = 1e-6;

/**
 * The widths of the places of one side, beyond its chairs: a link for each, or `4 x 24"` for a stretch whose links are too
 * narrow for their text. The left side is above in the plan.
 */
export function placeDims({ edges }: SeatMap, style: Style): Dim[] {
  const [left, right] = edges;
  const above = left.places.length > 0;
  const shown = above ? left : right;
  const stretches = shown.stretches.filter(({ count }) => count > 0);
  if (stretches.length === 0) return [];
  const side = above ? 'above' : 'below';
  const y = shown.edge.at(0, 0)[1];
  const edge = y + SIDES[side].out * (CHAIR_REACH - NEARER * style.scale);
  const at = levelAt(side, edge, 0, style);
  const point = (x: Mm): Pt => [x, y];
  const links = stopsOf(stretches);
  const { text: height, textGap } = sizes(style);
  const fits = (from: Mm, to: Mm, text = sayDim(to - from, style.lengths)): boolean =>
    to - from >= Math.max(roomFor(text, height), textWidth(text, height)) + 2 * textGap;
  if (links.slice(1).every((x, k) => fits(links[k]!, x)))
    return [...chain(links.map(point), side, style, { edge }).dims];
  return stretches.flatMap(({ span, count, width }): Dim[] => {
    const each = sayDim(width, style.lengths);
    const text = count > 1 ? `${count} x ${each}` : each;
    return fits(...span, text) ? [{ ...levelDim(point(span[0]), point(span[1]), side, at), text }] : [];
  });
}

/** Where places begin and end, the gaps between stretches included. */
function stopsOf(stretches: readonly SeatStretch[]): Mm[] {
  const stops = stretches.flatMap(({ span, width, count }) =>
    Array.from({ length: count + 1 }, (_, k) => span[0] + k * width),
  );
  return stops.sort((a, b) => a - b).filter((s, k) => k === 0 || s - stops[k - 1]! > SAME);
}
