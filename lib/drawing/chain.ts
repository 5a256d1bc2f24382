import type { End, Linear, Placement } from './dim.ts';
import { rise } from './dim-parts.ts';
import { arrowsFit, textFits } from './dim-row.ts';
import type { Pt } from './entity.ts';
import { spread } from './spread.ts';
import { edgeOf, extent, levelAt, levelDim, SIDES, type Stack, type StackOptions, type StackSide } from './stack.ts';
import { type Style, sizes } from './style.ts';

/** How one end of a narrow link looks: arrowhead outside, but a stroke where the next link is narrow as well. */
const narrowEnd = (neighbor: boolean | undefined): End => (neighbor === false ? 'stroke' : 'out');

/**
 * Dimensions end to end on one line. Text that does not fit goes beyond the ends of the chain, or from its middle to a
 * second row with leaders, spread so that no two touch.
 *
 * ```
 *     |<--- 100 --->|<-------- 160 -------->|<--- 100 --->|
 * ```
 *
 * Not handled: in a crowd of more than two narrow links a leader may cross the text of a link beside them that is just
 * wide enough for its own; a baseline has no such limit.
 *
 * @throws RangeError when fewer than two places are given, or two at the same place.
 */
export function chain(points: readonly Pt[], side: StackSide, style: Style, options: StackOptions = {}): Stack {
  const { axis, out } = SIDES[side];
  const { layer, edge = edgeOf(points, side), level = 0 } = options;
  const sorted = [...points].sort((a, b) => a[axis] - b[axis]);
  if (sorted.length < 2) throw new RangeError(`a chain of dimensions needs two points; it has ${sorted.length}`);
  const size = sizes(style);
  const at = levelAt(side, edge, level, style);
  const links = sorted.slice(1).map((to, i) => levelDim(sorted[i]!, to, side, at, layer));
  const room = links.map((dim) => {
    const { length, width } = extent(dim, style);
    return { width, text: textFits(length, width, size), arrows: arrowsFit(length, size) };
  });
  const raised = links.flatMap((dim, i) => (i > 0 && i < links.length - 1 && !room[i]!.text ? [{ dim, i }] : []));
  const middles = spread(
    raised.map(({ dim, i }) => ({
      middle: (dim.from[axis] + dim.to[axis]) / 2,
      width: room[i]!.width + 2 * size.textGap,
    })),
  );
  const row = at + out * (rise(size) + 1.3 * size.text + size.textGap); // clear of lettering on the line, tails included
  const places = new Map(
    raised.map(({ i }, k): [number, Pt] => [i, axis === 0 ? [middles[k]!, row] : [row, middles[k]!]]),
  );
  const textOf = (i: number): Placement['text'] => {
    if (room[i]!.text) return 'inside';
    return places.get(i) ?? (i === 0 && links.length > 1 ? 'before' : 'after');
  };
  const dims = links.map((dim, i): Linear => {
    const ends: [End, End] = room[i]!.arrows
      ? ['in', 'in']
      : [narrowEnd(room[i - 1]?.arrows), narrowEnd(room[i + 1]?.arrows)];
    return { ...dim, placement: { text: textOf(i)!, ends } };
  });
  return { dims, levels: raised.length > 0 ? 2 : 1 };
}
