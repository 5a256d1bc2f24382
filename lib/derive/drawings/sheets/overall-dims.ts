import { chain } from '../../../drawing/chain.ts';
import type { Dim } from '../../../drawing/dim.ts';
import type { Pt } from '../../../drawing/entity.ts';
import { levelAt, levelDim, type StackSide } from '../../../drawing/stack.ts';
import type { Style } from '../../../drawing/style.ts';
import type { Mm } from '../../../units/mm.ts';

/** Nearer than this is the same place, mm. */
const SAME: Mm = 1e-6;

/** Along one side of a view: from end to end of the piece, and before that where it stands. */
export interface Extents {
  /** Ends of the whole piece along the side. */
  readonly whole: readonly [Mm, Mm];
  /** Ends of what stands on the floor; left out when it does not matter. */
  readonly stand?: readonly [Mm, Mm];
  /** Where the extension lines start, across the side. */
  readonly foot: Mm;
}

/** The overall size of a view on one side, with a chain of overhangs inside it where the piece stands in from its ends. */
export function overallDims({ whole, stand, foot }: Extents, side: StackSide, style: Style): Dim[] {
  const upright = side === 'left' || side === 'right';
  const point = (value: Mm): Pt => (upright ? [foot, value] : [value, foot]);
  const stops = [whole[0], ...(stand ?? []), whole[1]].filter((v, k, all) => k === 0 || v > all[k - 1]! + SAME);
  const inner = stops.length > 2 ? chain(stops.map(point), side, style, { edge: foot }) : { dims: [], levels: 0 };
  const at = levelAt(side, foot, inner.levels, style);
  return [...inner.dims, levelDim(point(whole[0]), point(whole[1]), side, at)];
}
