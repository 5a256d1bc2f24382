import type { Aligned, Linear } from './dim.ts';
import { endMark, extension, label, leader, line, rise, upOf } from './dim-parts.ts';
import { dimRow } from './dim-row.ts';
import { dimText } from './dim-text.ts';
import type { Mark, Pt } from './entity.ts';
import type { Exploded } from './exploded.ts';
import { type Style, sizes } from './style.ts';
import { textWidth } from './text-size.ts';
import { along, angleOf, direction, distance, dot, left, middle, opposite, polar, sub } from './vec.ts';

/**
 * The distance of two points, along a stated direction or along the line that joins them.
 *
 * @throws RangeError when that distance is nothing.
 */
export function explodeLinear(dim: Linear | Aligned, style: Style): Exploded {
  const { layer, from, to } = dim;
  const size = sizes(style);
  const axis = dim.type === 'linear' ? polar(dim.angle) : direction(from, to, 'the two points of an aligned dimension');
  const across = left(axis);
  const footOf = (point: Pt): Pt => along(point, across, dot(sub(dim.at, point), across));
  const [a, b] = [footOf(from), footOf(to)];
  const value = dim.type === 'linear' ? Math.abs(dot(sub(to, from), axis)) : distance(from, to);
  const ahead = direction(a, b, 'along the dimension line, the two points of a linear dimension');
  const angle = angleOf(ahead);
  const text = dimText(dim, value, style);
  const width = textWidth(text, size.text);
  const row = dimRow(value, width, size, dim.placement);
  const textAt = typeof row.text === 'number' ? along(along(a, ahead, row.text), upOf(angle), rise(size)) : row.text;
  const lettering = label(layer, text, textAt, angle, style);
  const entities: Mark[] = [
    ...extension(layer, from, a, size),
    ...extension(layer, to, b, size),
    line(layer, along(a, ahead, row.start), along(a, ahead, row.end)),
    endMark(layer, a, opposite(ahead), row.ends[0], size),
    endMark(layer, b, ahead, row.ends[1], size),
    ...(typeof row.text === 'number' ? [] : leader(layer, middle(a, b), lettering, width, size)),
    lettering,
  ];
  const def = { type: dim.type, line: b, from, to, angle: dim.type === 'linear' ? dim.angle : angle };
  return { entities, textAt, def, value, text };
}
