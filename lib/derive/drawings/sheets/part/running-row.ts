import type { Entity } from '../../../../drawing/drawing.ts';
import type { Pt } from '../../../../drawing/entity.ts';
import { LAYERS } from '../../../../drawing/layers.ts';
import { spread } from '../../../../drawing/spread.ts';
import { SIDES, type StackSide } from '../../../../drawing/stack.ts';
import { type Style, sizes } from '../../../../drawing/style.ts';
import type { Mm } from '../../../../units/mm.ts';

/** A place along one side of a view and what stands there. */
export interface RunningStop {
  /** Along the side, mm. */
  readonly at: Mm;
  readonly text: string;
}

/** From the view to the slanting part of the lines, along it, and beside each text; paper mm. */
const OUT: Mm = 4;
const SLANT: Mm = 5;
const APART: Mm = 1.4;

/**
 * Running dimensions in one row: a line from each place outwards, its distance from the datum at the end of the line. Texts
 * that would touch are moved apart, their lines slanting after them. Above and below the text reads from the right.
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
  const width = (1.34 * textHeight + APART) * scale;
  const middles = spread(sorted.map(({ at }) => ({ middle: at, width })));
  const point = (along: Mm, across: Mm): Pt => (axis === 0 ? [along, across] : [across, along]);
  return sorted.flatMap(({ at, text }, k): Entity[] => {
    const bend = edge + out * OUT * scale;
    const end = bend + out * SLANT * scale;
    return [
      {
        kind: 'poly',
        layer: LAYERS.DIMENSION,
        points: [point(at, edge + out * size.gap), point(at, bend), point(middles[k]!, end)],
        closed: false,
      },
      {
        kind: 'text',
        layer: LAYERS.DIMENSION,
        text,
        at: point(middles[k]!, end + out * size.textGap),
        height: textHeight,
        ...(axis === 0 ? { rotation: 90 } : {}),
        align: out > 0 ? 'left' : 'right',
        valign: 'middle',
      },
    ];
  });
}
