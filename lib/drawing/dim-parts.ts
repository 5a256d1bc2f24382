import type { Deg } from '../units/mm.ts';
import type { End } from './dim.ts';
import type { Mark, Poly, Pt, Solid, Text } from './entity.ts';
import type { Layer } from './layer.ts';
import type { Sizes, Style } from './style.ts';
import { along, direction, distance, dot, left, opposite, polar, sub, upright } from './vec.ts';

export const line = (layer: Layer, from: Pt, to: Pt): Poly => ({
  kind: 'poly',
  layer,
  points: [from, to],
  closed: false,
});

/** A filled arrowhead whose body lies behind its tip, on the side of `back`. */
export function arrowhead(layer: Layer, tip: Pt, back: Pt, size: Sizes): Solid {
  const heel = along(tip, back, size.arrow);
  const across = left(back);
  return {
    kind: 'solid',
    layer,
    corners: [tip, along(heel, across, -size.arrowWidth / 2), along(heel, across, size.arrowWidth / 2)],
  };
}

/** An oblique stroke through the end of a dimension line, for places too narrow for arrowheads. */
export function stroke(layer: Layer, at: Pt, ahead: Pt, size: Sizes): Poly {
  const across = left(ahead);
  const slant = direction([0, 0], [ahead[0] + across[0], ahead[1] + across[1]], 'both ends of a stroke');
  return line(layer, along(at, slant, -size.arrow / 2), along(at, slant, size.arrow / 2));
}

/** An extension line with its gap and overshoot; nothing when the dimension line runs through the point itself. */
export function extension(layer: Layer, point: Pt, foot: Pt, size: Sizes): readonly Mark[] {
  const reach = distance(point, foot);
  if (reach < 1e-9) return [];
  const away = direction(point, foot, 'a point and its dimension line');
  return [line(layer, along(point, away, Math.min(size.gap, reach)), along(foot, away, size.overshoot))];
}

/** Half the height of lettering and its gap: from a dimension line to the center of the text over it. */
export const rise = (size: Sizes): number => size.textGap + size.text / 2;

/** The upward direction of lettering that runs along a line of an angle. */
export const upOf = (angle: Deg): Pt => polar(upright(angle) + 90);

/** The lettering of a dimension, centered. */
export const label = (layer: Layer, text: string, at: Pt, angle: Deg, style: Style): Text => ({
  kind: 'text',
  layer,
  text,
  at,
  height: style.textHeight,
  rotation: upright(angle),
  align: 'center',
  valign: 'middle',
});

/**
 * A leader from a dimension line to lettering of a width that was moved away from it. It ends under (or over) the text,
 * as little to the side as it can.
 */
export function leader(layer: Layer, from: Pt, text: Text, width: number, size: Sizes): readonly Mark[] {
  const ahead = polar(text.rotation ?? 0);
  const [side, height] = [dot(sub(from, text.at), ahead), dot(sub(from, text.at), left(ahead))];
  const foot = along(text.at, ahead, Math.max(-width / 2, Math.min(width / 2, side)));
  const end = along(foot, left(ahead), height < 0 ? -rise(size) : rise(size));
  return Math.abs(height) <= rise(size) + size.textGap ? [] : [line(layer, from, end)];
}

/** The mark at one end of a dimension line; `outward` leads away from the other end. */
export function endMark(layer: Layer, tip: Pt, outward: Pt, end: End, size: Sizes): Mark {
  if (end === 'stroke') return stroke(layer, tip, outward, size);
  return arrowhead(layer, tip, end === 'in' ? opposite(outward) : outward, size);
}
