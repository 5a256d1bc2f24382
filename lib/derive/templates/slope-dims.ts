import type { Angular } from '../../drawing/dim.ts';
import type { Pt } from '../../drawing/entity.ts';
import { LAYERS } from '../../drawing/layers.ts';
import type { Style } from '../../drawing/style.ts';
import type { Outline, OutlinePoint } from '../../geometry/outline.ts';
import { areParallel, isSloped, type ScribedStretch, scribedStretches } from './scribed-stretches.ts';

/** Angle of every slope to the level, and the angle of the V where two slopes meet. */
export function slopeDims(outline: Outline, style: Style): Angular[] {
  const stretches = scribedStretches(outline).filter(isSloped);
  const slopes = stretches.map(({ a, b }) => slope(a, b, style));
  const dims = [...slopes];
  for (const [i, first] of stretches.entries()) {
    const second = stretches[i + 1];
    if (second && !areParallel(first, second)) dims.push(valley(first, second, style));
  }
  return dims;
}

/** Measured at the low end of the slope, the arc well up the slope where the two lines have come apart. */
function slope(a: OutlinePoint, b: OutlinePoint, { scale, textHeight }: Style): Angular {
  const [low, high]: [Pt, Pt] =
    a.y < b.y
      ? [
          [a.x, a.y],
          [b.x, b.y],
        ]
      : [
          [b.x, b.y],
          [a.x, a.y],
        ];
  const run = high[0] - low[0];
  const reach = Math.sign(run) * Math.max(Math.abs(run) * 0.8, textHeight * scale);
  const tilt = (high[1] - low[1]) / run;
  return {
    kind: 'dim',
    type: 'angular',
    layer: LAYERS.DIMENSION,
    first: [low, high],
    second: [low, [low[0] + run, low[1]]],
    at: [low[0] + reach, low[1] + (reach * tilt) / 2],
  };
}

function valley(first: ScribedStretch, second: ScribedStretch, { scale }: Style): Angular {
  const [p, q] = [first.a, first.b];
  const [r, s] = [second.a, second.b];
  const middle = (q.x + r.x) / 2;
  return {
    kind: 'dim',
    type: 'angular',
    layer: LAYERS.DIMENSION,
    first: [
      [p.x, p.y],
      [q.x, q.y],
    ],
    second: [
      [r.x, r.y],
      [s.x, s.y],
    ],
    at: [middle, Math.max(p.y, s.y) + 15 * scale],
  };
}
