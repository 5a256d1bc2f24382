import type { Aligned, Angular, Diameter, Linear, Radius, Running } from '../../lib/drawing/dim.ts';
import type { Drawing } from '../../lib/drawing/drawing.ts';
import type { Poly, Pt } from '../../lib/drawing/entity.ts';
import { LAYERS } from '../../lib/drawing/layers.ts';
import { DEFAULT_STYLE } from '../../lib/drawing/style.ts';

const layer = LAYERS.DIMENSION;

export const linear = (from: Pt, to: Pt, angle: number, at: Pt, more: Partial<Linear> = {}): Linear => ({
  kind: 'dim',
  type: 'linear',
  layer,
  from,
  to,
  angle,
  at,
  ...more,
});

export const aligned = (from: Pt, to: Pt, at: Pt): Aligned => ({ kind: 'dim', type: 'aligned', layer, from, to, at });

export const angular = (first: readonly [Pt, Pt], second: readonly [Pt, Pt], at: Pt): Angular => ({
  kind: 'dim',
  type: 'angular',
  layer,
  first,
  second,
  at,
});

export const radius = (center: Pt, on: Pt): Radius => ({ kind: 'dim', type: 'radius', layer, center, on });
export const diameter = (center: Pt, on: Pt): Diameter => ({ kind: 'dim', type: 'diameter', layer, center, on });

/** A running dimension below an edge at y = 0, or left of an end at x = 0. */
export const running = (from: number, to: number, axis: 0 | 1, text = 'a  <>'): Running => {
  const point = (along: number, out: number): Pt => (axis === 0 ? [along, out] : [out, along]);
  return {
    kind: 'dim',
    type: 'running',
    layer,
    text,
    axis,
    from: point(from, 0),
    to: point(to, 0),
    line: [point(to, -1), point(to, -4), point(to + 2, -9)],
  };
};

export const poly = (points: Poly['points'], closed = false): Poly => ({
  kind: 'poly',
  layer: LAYERS.OUTLINE,
  points,
  closed,
});

/** Where a ray from a point goes, by school trigonometry. */
export const ray = (from: Pt, angle: number, length: number): Pt => [
  from[0] + length * Math.cos((angle * Math.PI) / 180),
  from[1] + length * Math.sin((angle * Math.PI) / 180),
];

/** A leg with a V on top, a mortise with round ends, a bore, and every kind of dimension, one of them too short for its text. */
export const LEG: Drawing = {
  title: 'Leg <A1> & mortise',
  style: DEFAULT_STYLE,
  entities: [
    poly(
      [
        [0, 0],
        [89, 0],
        [89, 347.5],
        [44.5, 346.25],
        [0, 347.5],
      ],
      true,
    ),
    {
      kind: 'poly',
      layer: LAYERS.MORTISE,
      closed: true,
      points: [
        [30, 200],
        [59, 200, 1],
        [59, 212.7],
        [30, 212.7, 1],
      ],
    },
    { kind: 'circle', layer: LAYERS.BORE, center: [44.5, 100], radius: 4 },
    { kind: 'arc', layer: LAYERS.HIDDEN, center: [44.5, 100], radius: 8, start: 30, end: 300 },
    poly([
      [44.5, 0],
      [44.5, 346.25],
    ]),
    {
      kind: 'text',
      layer: LAYERS.TEXT,
      text: 'A1 & <left>',
      at: [44.5, 40],
      height: 3.5,
      align: 'center',
      valign: 'middle',
    },
    linear([0, 0], [89, 0], 0, [0, -20]),
    linear([0, 0], [0, 347.5], 90, [-20, 0], { text: '13 3/8"' }),
    linear([30, 200], [30, 212.7], 90, [20, 0]),
    linear([0, 0], [89, 347.5], 30, [120, 0]),
    aligned([0, 347.5], [44.5, 346.25], [0, 360]),
    angular(
      [
        [44.5, 346.25],
        [89, 347.5],
      ],
      [
        [44.5, 346.25],
        [100, 346.25],
      ],
      [124.5, 347.5],
    ),
    radius([44.5, 100], [52.5, 100]),
    diameter([44.5, 100], [44.5, 104]),
  ],
};

/** Their texts, written by hand: 89 mm is 3.5039 in, 347.5 mm is given, 12.7 mm is half an inch, and so on. */
export const LEG_TEXTS: readonly string[] = [
  '3 1/2"',
  '13 3/8"',
  '1/2"',
  '9 7/8"',
  '1 3/4"',
  '1.6\u00b0',
  'R5/16"',
  '\u00d85/16"',
];
