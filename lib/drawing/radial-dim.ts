import type { Diameter, Radius } from './dim.ts';
import { arrowhead, label, line, rise, upOf } from './dim-parts.ts';
import { dimText } from './dim-text.ts';
import type { Mark, Pt } from './entity.ts';
import type { Exploded } from './exploded.ts';
import { type Sizes, type Style, sizes } from './style.ts';
import { textWidth } from './text-size.ts';
import { along, angleOf, direction, distance, opposite } from './vec.ts';

/** A radius line is drawn from the center while it is at most this many times as long as it must be: ours. */
const FROM_CENTER = 2;

interface Ray {
  readonly on: Pt;
  /** From the center to `on`. */
  readonly out: Pt;
  readonly radius: number;
  /** Length of line that carries the arrowhead and the text. */
  readonly need: number;
  readonly inside: boolean;
}

function radiusMarks(dim: Radius, ray: Ray, size: Sizes): readonly Mark[] {
  const { on, out, need } = ray;
  const inner = ray.radius <= FROM_CENTER * need ? dim.center : along(on, out, -need);
  return [
    ray.inside ? line(dim.layer, inner, on) : line(dim.layer, on, along(on, out, need)),
    arrowhead(dim.layer, on, ray.inside ? opposite(out) : out, size),
  ];
}

function diameterMarks(dim: Diameter, ray: Ray, size: Sizes): readonly Mark[] {
  const { on, out } = ray;
  const far = along(dim.center, out, -ray.radius);
  const shaft = ray.inside
    ? line(dim.layer, far, on)
    : line(dim.layer, along(far, out, -2 * size.arrow), along(on, out, ray.need));
  return [
    shaft,
    arrowhead(dim.layer, far, ray.inside ? out : opposite(out), size),
    arrowhead(dim.layer, on, ray.inside ? opposite(out) : out, size),
  ];
}

/** A radius or a diameter: the text over its line, inside the curve where it fits, otherwise outside. */
export function explodeRadial(dim: Radius | Diameter, style: Style): Exploded {
  const { layer, center, on } = dim;
  const size = sizes(style);
  const out = direction(center, on, 'the center and the point of a round dimension');
  const radius = distance(center, on);
  const value = dim.type === 'radius' ? radius : 2 * radius;
  const text = dimText(dim, value, style);
  const width = textWidth(text, size.text);
  const need = size.arrow + width + 2 * size.textGap;
  const inside = dim.placement ? dim.placement === 'inside' : radius >= need;
  const ray: Ray = { on, out, radius, need, inside };
  const angle = angleOf(out);
  const reach = size.arrow + size.textGap + width / 2;
  const textAt = along(along(on, out, inside ? -reach : reach), upOf(angle), rise(size));
  const marks = dim.type === 'radius' ? radiusMarks(dim, ray, size) : diameterMarks(dim, ray, size);
  const far = dim.type === 'radius' ? center : along(center, out, -radius);
  return {
    entities: [...marks, label(layer, text, textAt, angle, style)],
    textAt,
    def: { type: dim.type, far, near: on, leader: inside ? 0 : need },
    value,
    text,
  };
}
