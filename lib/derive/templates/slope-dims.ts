import type { Angular } from '../../drawing/dim.ts';
import type { Pt } from '../../drawing/entity.ts';
import { LAYERS } from '../../drawing/layers.ts';
import { type Style, sizes } from '../../drawing/style.ts';
import type { Outline, OutlinePoint } from '../../geometry/outline.ts';
import { areParallel, isSloped, type ScribedStretch, scribedStretches } from './scribed-stretches.ts';
import { firstLegible, type Sheet } from './sheet.ts';

/** Puts down the angle of every slope to the level, and the angle of the V where two slopes meet. */
export function putSlopeDims(sheet: Sheet, outline: Outline): void {
  const stretches = scribedStretches(outline).filter(isSloped);
  for (const [i, first] of stretches.entries()) {
    const second = stretches[i + 1];
    if (second && !areParallel(first, second)) sheet.put(firstLegible(sheet, valleys(first, second, sheet.style)));
  }
  for (const { a, b } of stretches) sheet.put(firstLegible(sheet, slopes(a, b, sheet.style)));
}

/** Where along a slope its angle may be shown: well up, where the two lines have come apart; our convention. */
const ALONG = [0.8, 0.7, 0.6, 0.9, 0.5, 0.4, 0.3, 0.2] as const;

type Choices = readonly [Angular, ...Angular[]];

/** Measured at the low end of the slope; the text rather in the wood, below the level line, than above the slope. */
function slopes(a: OutlinePoint, b: OutlinePoint, style: Style): Choices {
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
  const tilt = (high[1] - low[1]) / run;
  const least = 2 * sizes(style).arrow + 1;
  const at = (share: number): Pt => {
    const reach = Math.sign(run) * Math.max(Math.abs(run) * share, least);
    return [low[0] + reach, low[1] + (reach * tilt) / 2];
  };
  // Angles run counter-clockwise: to the right the level line comes first, to the left the slope.
  const [wood, air] = run > 0 ? (['before', 'after'] as const) : (['after', 'before'] as const);
  const choice = (share: number, text: 'before' | 'after'): Angular => ({
    kind: 'dim',
    type: 'angular',
    layer: LAYERS.DIMENSION,
    first: [low, high],
    second: [low, [low[0] + run, low[1]]],
    at: at(share),
    placement: { text },
  });
  return [
    choice(ALONG[0], wood),
    ...ALONG.slice(1).map((share) => choice(share, wood)),
    ...ALONG.map((s) => choice(s, air)),
  ];
}

/** mm on paper from the higher end of the V to its arc; our convention. */
const OVER = [15, 20, 25, 30, 40] as const;

function valleys(first: ScribedStretch, second: ScribedStretch, { scale }: Style): Choices {
  const [p, q] = [first.a, first.b];
  const [r, s] = [second.a, second.b];
  const middle = (q.x + r.x) / 2;
  const choice = (over: number): Angular => ({
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
    at: [middle, Math.max(p.y, s.y) + over * scale],
  });
  return [choice(OVER[0]), ...OVER.slice(1).map(choice)];
}
