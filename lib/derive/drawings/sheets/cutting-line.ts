import { arrowhead } from '../../../drawing/dim-parts.ts';
import type { Entity } from '../../../drawing/drawing.ts';
import type { Pt } from '../../../drawing/entity.ts';
import { LAYERS } from '../../../drawing/layers.ts';
import { type Style, sizes } from '../../../drawing/style.ts';
import type { Mm } from '../../../units/mm.ts';

/** Past the view, and of the arrows that show which way one looks; paper mm: common practice, no source. */
const PAST: Mm = 3;
const ARROW: Mm = 5;
const LETTER: Mm = 3.5;

/** So near to a cutting line an extension line would cross its letter, paper mm; our convention. */
const NEAR: Mm = 8;

/**
 * An upright cutting line over a view from `low` to `high`, arrows in the direction of sight, the letter A at each end; none
 * below where the extension lines of dimensions come too near.
 */
export function cuttingLine(
  x: Mm,
  [low, high]: readonly [Mm, Mm],
  sight: 1 | -1,
  below: readonly Mm[],
  style: Style,
): Entity[] {
  const { scale } = style;
  const [top, bottom] = [high + PAST * scale, low - PAST * scale];
  const crowded = below.some((other) => Math.abs(other - x) < NEAR * scale);
  return [
    line('CENTER', [x, bottom], [x, top]),
    ...lineEnd([x, top], 1, sight, style),
    ...(crowded ? [] : lineEnd([x, bottom], -1, sight, style)),
  ];
}

const line = (layer: keyof typeof LAYERS, ...points: readonly Pt[]): Entity => ({
  kind: 'poly',
  layer: LAYERS[layer],
  points,
  closed: false,
});

/** A wide end, an arrow in the direction of sight, the letter behind it. */
function lineEnd([x, y]: Pt, out: 1 | -1, sight: 1 | -1, style: Style): Entity[] {
  const { scale } = style;
  const size = { ...sizes(style), arrow: sizes(style).arrow * 1.2 };
  return [
    line('SECTION', [x, y - out * 3 * scale], [x, y]),
    line('SECTION', [x, y], [x + sight * ARROW * scale, y]),
    arrowhead(LAYERS.SECTION, [x + sight * (ARROW + 1) * scale, y], [-sight, 0], size),
    {
      kind: 'text',
      layer: LAYERS.TEXT,
      text: 'A',
      at: [x - sight * 2 * scale, y],
      height: LETTER,
      align: sight > 0 ? 'right' : 'left',
      valign: 'middle',
      bold: true,
    },
  ];
}
