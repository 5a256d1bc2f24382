import type { Mm } from '../units/mm.ts';
import type { Linear } from './dim.ts';
import { dimText } from './dim-text.ts';
import type { Pt } from './entity.ts';
import type { Layer } from './layer.ts';
import { LAYERS } from './layers.ts';
import { type Style, sizes } from './style.ts';
import { textWidth } from './text-size.ts';

/** On which side of a part a stack of dimension lines lies. */
export type StackSide = 'above' | 'below' | 'left' | 'right';

export interface StackOptions {
  /** `DIMENSION` when left out. */
  readonly layer?: Layer;
  /**
   * The edge of the part that the spacing counts from: a y for above and below, an x for left and right. When left out,
   * the outermost of the points.
   */
  readonly edge?: Mm;
  /** The first level to use; 0, next to the part, when left out. */
  readonly level?: number;
}

export interface Stack {
  readonly dims: readonly Linear[];
  /** How many levels they take: the next stack on this side starts that much further out. */
  readonly levels: number;
}

/** Where a side is: the axis it measures along (0 is x), and the way out from the part along the other axis. */
export const SIDES: { readonly [S in StackSide]: { readonly axis: 0 | 1; readonly out: 1 | -1 } } = {
  above: { axis: 0, out: 1 },
  below: { axis: 0, out: -1 },
  left: { axis: 1, out: -1 },
  right: { axis: 1, out: 1 },
};

/**
 * The y (above, below) or x (left, right) of a dimension line, counted outwards from the edge of the part.
 *
 * @throws RangeError when the levels are so close that lettering would touch the next line.
 */
export function levelAt(side: StackSide, edge: Mm, level: number, style: Style): Mm {
  const { firstSpacing, nextSpacing, textHeight, textGap, scale } = style;
  const need = 1.3 * textHeight + 2 * textGap; // a capital and its tail
  if (nextSpacing < need) throw new RangeError(`dimension lines ${nextSpacing} mm apart; lettering needs ${need} mm`);
  return edge + SIDES[side].out * scale * (firstSpacing + level * nextSpacing);
}

/** The outermost of some points on a side. */
export function edgeOf(points: readonly Pt[], side: StackSide): Mm {
  const { axis, out } = SIDES[side];
  return out * Math.max(...points.map((point) => out * point[1 - axis]!));
}

/** A dimension along the axis of a side, on one level. */
export function levelDim(from: Pt, to: Pt, side: StackSide, level: Mm, layer: Layer = LAYERS.DIMENSION): Linear {
  const { axis } = SIDES[side];
  return {
    kind: 'dim',
    type: 'linear',
    layer,
    from,
    to,
    angle: axis === 0 ? 0 : 90,
    at: axis === 0 ? [from[0], level] : [level, from[1]],
  };
}

/** Length and width of lettering of a dimension along the axis of its side, in model mm. */
export function extent(dim: Linear, style: Style): { readonly length: Mm; readonly width: Mm } {
  const axis = dim.angle === 0 ? 0 : 1;
  const length = Math.abs(dim.to[axis] - dim.from[axis]);
  return { length, width: textWidth(dimText(dim, length, style), sizes(style).text) };
}
