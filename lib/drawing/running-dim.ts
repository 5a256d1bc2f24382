import type { Running } from './dim.ts';
import { dimText } from './dim-text.ts';
import type { Mark, Pt, Text } from './entity.ts';
import type { Exploded } from './exploded.ts';
import { type Style, sizes } from './style.ts';
import { textWidth } from './text-size.ts';

/**
 * A running dimension: its line, and its text where the line ends. Across the sheet the text reads from the right.
 *
 * ```
 *     a 4 1/8"     text, along the line
 *        |
 *        |         line: straight out, then slanting where neighbors need room
 *     ---o----     the place; the datum is somewhere along this edge
 * ```
 *
 * @throws RangeError when the place is the datum: there is nothing to measure.
 */
export function explodeRunning(dim: Running, style: Style): Exploded {
  const { layer, from, to, axis, line } = dim;
  const value = Math.abs(to[axis] - from[axis]);
  if (value === 0)
    throw new RangeError('a running dimension of 0 measures nothing; draw its line and its text instead');
  const text = dimText(dim, value, style);
  const lettering = runningText(dim, text, style);
  const marks: readonly Mark[] = [{ kind: 'poly', layer, points: line, closed: false }, lettering];
  const half = textWidth(text, sizes(style).text) / 2;
  const out = lettering.align === 'left' ? half : -half;
  const textAt: Pt = axis === 0 ? [lettering.at[0], lettering.at[1] + out] : [lettering.at[0] + out, lettering.at[1]];
  // Readers that lay it out anew get a dimension line through the end of the line that is drawn.
  const level: Pt = axis === 0 ? [to[0], line[2][1]] : [line[2][0], to[1]];
  return {
    entities: marks,
    textAt,
    def: { type: 'linear', line: level, from, to, angle: axis === 0 ? 0 : 90 },
    value,
    text,
  };
}

/** The text at the end of the line of a running dimension. */
export function runningText({ layer, axis, line }: Omit<Running, 'from' | 'to'>, text: string, style: Style): Text {
  const [start, , end] = line;
  const out = Math.sign(end[1 - axis]! - start[1 - axis]!);
  const gap = out * sizes(style).textGap;
  return {
    kind: 'text',
    layer,
    text,
    at: axis === 0 ? [end[0], end[1] + gap] : [end[0] + gap, end[1]],
    height: style.textHeight,
    ...(axis === 0 ? { rotation: 90 } : {}),
    align: out > 0 ? 'left' : 'right',
    valign: 'middle',
  };
}
