import type { Running } from '../../../../drawing/dim.ts';
import type { Entity } from '../../../../drawing/drawing.ts';
import type { Pt } from '../../../../drawing/entity.ts';
import { LAYERS } from '../../../../drawing/layers.ts';
import { runningText } from '../../../../drawing/running-dim.ts';
import { spread } from '../../../../drawing/spread.ts';
import { SIDES, type StackSide } from '../../../../drawing/stack.ts';
import { type Style, sizes } from '../../../../drawing/style.ts';
import type { Mm } from '../../../../units/mm.ts';

/** A place along one side of a view and what stands there. */
export interface RunningStop {
  /** Along the side, mm. */
  readonly at: Mm;
  /** Where the datum is along the side, mm. */
  readonly from: Mm;
  readonly text: string;
}

/** From the view to the slanting part of the lines, along it, and beside each text; paper mm, our convention. */
const OUT: Mm = 4;
const SLANT: Mm = 5;
const APART: Mm = 1.4;

/** Room of a line of lettering across it, in capital heights: a little over a capital and its tail, our convention. */
const LINE = 1.34;

/** Nearer to the datum than this is on it, mm. */
const SAME: Mm = 1e-3;

/**
 * Running dimensions in one row: a line from each place outwards, its distance from the datum at the end of the line. Texts
 * that would touch are moved apart, their lines slanting after them. Above and below the text reads from the right. Each is
 * a dimension, but for the 0 of the datum itself.
 *
 * ```
 *      0   4 1/8"  23"
 *      |    |       |
 *      +----o-------o----
 * ```
 */
export function runningRow(stops: readonly RunningStop[], edge: Mm, side: StackSide, style: Style): Entity[] {
  const { axis, out } = SIDES[side];
  const { scale, textHeight } = style;
  const size = sizes(style);
  const sorted = [...stops].sort((a, b) => a.at - b.at);
  const width = (LINE * textHeight + APART) * scale;
  const middles = spread(sorted.map(({ at }) => ({ middle: at, width })));
  const point = (along: Mm, across: Mm): Pt => (axis === 0 ? [along, across] : [across, along]);
  const bend = edge + out * OUT * scale;
  const end = bend + out * SLANT * scale;
  return sorted.flatMap(({ at, from, text }, k): Entity[] => {
    const line: Running['line'] = [point(at, edge + out * size.gap), point(at, bend), point(middles[k]!, end)];
    const dim = { kind: 'dim', type: 'running', layer: LAYERS.DIMENSION, axis, line, text } as const;
    if (Math.abs(at - from) >= SAME) return [{ ...dim, from: point(from, edge), to: point(at, edge) }];
    return [{ kind: 'poly', layer: dim.layer, points: line, closed: false }, runningText(dim, text, style)];
  });
}
