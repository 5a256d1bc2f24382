import type { Dim, DimType } from './dim.ts';
import type { Entity } from './drawing.ts';
import type { Pt } from './entity.ts';
import { moveMark } from './place.ts';

type Move = (point: Pt) => Pt;

const isPoint = (text: unknown): text is Pt => Array.isArray(text);

/** Lettering that was put on a point goes along. */
function placed<D extends Extract<Dim, { type: 'linear' | 'aligned' | 'angular' }>>(dim: D, to: Move): D {
  const text = dim.placement?.text;
  return isPoint(text) ? { ...dim, placement: { ...dim.placement, text: to(text) } } : dim;
}

const line = ([a, b]: readonly [Pt, Pt], to: Move): readonly [Pt, Pt] => [to(a), to(b)];

const DIMS: { readonly [K in DimType]: (dim: Extract<Dim, { type: K }>, to: Move) => Dim } = {
  linear: (dim, to) => ({ ...placed(dim, to), from: to(dim.from), to: to(dim.to), at: to(dim.at) }),
  aligned: (dim, to) => ({ ...placed(dim, to), from: to(dim.from), to: to(dim.to), at: to(dim.at) }),
  angular: (dim, to) => ({
    ...placed(dim, to),
    first: line(dim.first, to),
    second: line(dim.second, to),
    at: to(dim.at),
  }),
  radius: (dim, to) => ({ ...dim, center: to(dim.center), on: to(dim.on) }),
  diameter: (dim, to) => ({ ...dim, center: to(dim.center), on: to(dim.on) }),
  running: (dim, to) => ({
    ...dim,
    from: to(dim.from),
    to: to(dim.to),
    line: [to(dim.line[0]), to(dim.line[1]), to(dim.line[2])],
  }),
};

/** A mark or a dimension, shifted; model mm. What a dimension measures stays the same. */
export function move(entity: Entity, by: Pt): Entity {
  const to: Move = ([x, y]) => [x + by[0], y + by[1]];
  if (entity.kind !== 'dim') return moveMark(entity, to);
  return (DIMS[entity.type] as (dim: Dim, to: Move) => Dim)(entity, to);
}
