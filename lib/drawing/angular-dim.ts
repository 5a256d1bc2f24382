import { degrees, radians } from '../units/mm.ts';
import type { Angular, End } from './dim.ts';
import { endMark, label, leader, line, rise, upOf } from './dim-parts.ts';
import { dimRow } from './dim-row.ts';
import { dimText } from './dim-text.ts';
import type { Mark, Pt } from './entity.ts';
import type { Exploded } from './exploded.ts';
import type { Layer } from './layer.ts';
import { type Bound, type Sector, sectorAt } from './sector.ts';
import { type Sizes, type Style, sizes } from './style.ts';
import { textWidth } from './text-size.ts';
import { along, angleOf, direction, distance, dot, left, opposite, polar, sub } from './vec.ts';

/** What carries a measured line to the dimension arc, where the arc passes beyond its ends. */
function carry(layer: Layer, vertex: Pt, bound: Bound, radius: number, size: Sizes): readonly Mark[] {
  const [near, far] = bound.ray.map((point) => Math.max(0, dot(sub(point, vertex), bound.ahead))) as [number, number];
  const at = (reach: number): Pt => along(vertex, bound.ahead, reach);
  if (radius > far) return [line(layer, at(Math.min(far + size.gap, radius)), at(radius + size.overshoot))];
  if (radius < near) return [line(layer, at(Math.max(near - size.gap, radius)), at(radius - size.overshoot))];
  return [];
}

/** The mark where the arc meets a bound: its heel is on the arc as well, so that an arrowhead does not lean off it. */
function arcEnd(layer: Layer, vertex: Pt, bound: Bound, outward: 1 | -1, radius: number, end: End, size: Sizes): Mark {
  const tip = along(vertex, bound.ahead, radius);
  const turn = degrees(size.arrow / radius) * (end === 'in' ? -outward : outward);
  const heel = along(vertex, polar(bound.angle + turn), radius);
  const back = direction(tip, heel, 'the tip and the heel of an arrowhead');
  return endMark(layer, tip, end === 'in' ? opposite(back) : back, end, size);
}

/** How far a circle rises over the middle of its chord: lettering on the hollow side must keep that clear as well. */
function sag(up: Pt, outward: Pt, radius: number, width: number): number {
  if (dot(up, outward) >= 0) return 0;
  return radius - Math.sqrt(Math.max(0, radius ** 2 - (width / 2) ** 2));
}

function arcRadius(sector: Sector, at: Pt, size: Sizes): number {
  const radius = distance(sector.vertex, at);
  if (radius >= 2 * size.arrow) return radius;
  throw new RangeError(`the arc of an angle has radius ${radius} mm; two arrowheads need ${2 * size.arrow} mm`);
}

/**
 * The angle between two lines.
 *
 * @throws RangeError for parallel lines, for an arc that is placed on one of the lines, and for an arc whose radius is
 * shorter than two arrowheads.
 */
export function explodeAngular(dim: Angular, style: Style): Exploded {
  const { layer, at } = dim;
  const size = sizes(style);
  const sector = sectorAt(dim.first, dim.second, at);
  const { vertex, value, start, end } = sector;
  const radius = arcRadius(sector, at, size);
  const text = dimText(dim, value, style);
  const width = textWidth(text, size.text);
  const length = radians(value) * radius;
  const row = dimRow(length, width, size, dim.placement);
  const angleAt = (reach: number): number => start.angle + degrees(reach / radius);
  const outward = polar(angleAt(typeof row.text === 'number' ? row.text : length / 2));
  const tangent = angleOf(left(outward));
  const up = upOf(tangent);
  const onArc = along(vertex, outward, radius);
  const textAt =
    typeof row.text === 'number' ? along(onArc, up, rise(size) + sag(up, outward, radius, width)) : row.text;
  const lettering = label(layer, text, textAt, tangent, style);
  const entities: Mark[] = [
    ...carry(layer, vertex, start, radius, size),
    ...carry(layer, vertex, end, radius, size),
    { kind: 'arc', layer, center: vertex, radius, start: angleAt(row.start), end: angleAt(row.end) },
    arcEnd(layer, vertex, start, -1, radius, row.ends[0], size),
    arcEnd(layer, vertex, end, 1, radius, row.ends[1], size),
    ...(typeof row.text === 'number' ? [] : leader(layer, onArc, lettering, width, size)),
    lettering,
  ];
  return { entities, textAt, def: { type: 'angular', start: start.ray, end: end.ray, arc: at }, value, text };
}
