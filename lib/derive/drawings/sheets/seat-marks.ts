import type { Entity } from '../../../drawing/drawing.ts';
import type { Pt, Vertex } from '../../../drawing/entity.ts';
import { LAYERS } from '../../../drawing/layers.ts';
import type { Style } from '../../../drawing/style.ts';
import type { Mm } from '../../../units/mm.ts';
import type { SeatMap } from '../../checks/seat-map.ts';
import type { SeatPlace } from '../../checks/seat-place.ts';

/** A chair in the plan, mm: width, depth, rounding of its back, and how far its front stands off the edge. Our convention. */
const CHAIR = { width: 440, depth: 340, round: 100, off: 40 } as const;

/** Quarter circle. */
const QUARTER = Math.tan(Math.PI / 8);

/** How far chairs reach out from the edge of a top, mm. */
export const CHAIR_REACH: Mm = CHAIR.off + CHAIR.depth;

/** Heights of the numbers, paper mm; ISO 3098-1. */
const NUMBERS = [3.5, 2.5, 1.8] as const;

/** Which way a place looks away from the table. */
const OUT: { readonly [E in SeatPlace['edge']]: Pt } = {
  'left side': [0, 1],
  'right side': [0, -1],
  'reference end': [-1, 0],
  'far end': [1, 0],
};

/** A numbered chair at every place, in the plan; mm of the table's frame. */
export const seatMarks = ({ places }: SeatMap, { scale }: Style): Entity[] => {
  const height = NUMBERS.find((h) => h * scale < CHAIR.depth / 2) ?? NUMBERS.at(-1)!;
  return places.flatMap((place, k) => chair(place, `${k + 1}`, height));
};

function chair({ edge, middle, width }: SeatPlace, number: string, height: Mm): Entity[] {
  const out = OUT[edge];
  const along: Pt = [-out[1], out[0]];
  const at = (s: Mm, t: Mm): Pt => [middle[0] + along[0] * s + out[0] * t, middle[1] + along[1] * s + out[1] * t];
  const half = Math.min(CHAIR.width, width - 60) / 2;
  const { off, round } = CHAIR;
  const back = CHAIR_REACH;
  const points: Vertex[] = [
    at(half, off),
    [...at(half, back - round), QUARTER],
    at(half - round, back),
    [...at(-half + round, back), QUARTER],
    at(-half, back - round),
    at(-half, off),
  ];
  const turned = out[0] * along[1] - out[1] * along[0] > 0;
  const drawn = turned
    ? points.map(([x, y, bulge]): Vertex => (bulge === undefined ? [x, y] : [x, y, -bulge]))
    : points;
  return [
    { kind: 'poly', layer: LAYERS.NEIGHBOR, points: drawn, closed: true },
    {
      kind: 'text',
      layer: LAYERS.TEXT,
      text: number,
      at: at(0, off + CHAIR.depth / 2),
      height,
      align: 'center',
      valign: 'middle',
    },
  ];
}
