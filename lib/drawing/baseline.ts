import type { Mm } from '../units/mm.ts';
import type { Linear, Placement } from './dim.ts';
import { outerReach, textFits } from './dim-row.ts';
import type { Pt } from './entity.ts';
import { edgeOf, extent, levelAt, levelDim, SIDES, type Stack, type StackOptions, type StackSide } from './stack.ts';
import { type Style, sizes } from './style.ts';

/** Points nearer than this along the axis share one dimension: 1e-6 mm, the rounding of outlines. */
const SAME = 1e-6;

interface Feature {
  readonly point: Pt;
  readonly distance: Mm;
}

/** What lies on one hand of the datum, nearest first; of several points at one distance the one nearest the side. */
function features(points: readonly Pt[], datum: Pt, side: StackSide, hand: 1 | -1): readonly Feature[] {
  const { axis, out } = SIDES[side];
  const found = points
    .map((point) => ({ point, distance: hand * (point[axis] - datum[axis]) }))
    .filter(({ distance }) => distance > SAME)
    .sort((a, b) => a.distance - b.distance || out * (b.point[1 - axis]! - a.point[1 - axis]!));
  return found.filter((feature, i) => i === 0 || feature.distance - found[i - 1]!.distance > SAME);
}

/**
 * Where the text of one dimension goes: over its line; else beyond the feature, clear of the next extension line; else
 * beyond the datum, if nothing on the other hand reaches this level; else nowhere on this level.
 */
function textPlace(dim: Linear, gapToNext: Mm, datumFree: boolean, style: Style): Placement | undefined {
  const size = sizes(style);
  const { length, width } = extent(dim, style);
  if (textFits(length, width, size)) return { text: 'inside' };
  if (gapToNext >= outerReach(length, width, size) + size.textGap) return { text: 'after' };
  return datumFree ? { text: 'before' } : undefined;
}

interface Hand {
  /** With a place for their text, shortest first: the levels from the part outwards. */
  readonly placed: readonly { readonly point: Pt; readonly placement: Placement }[];
  /** Without one, longest first: so the extension lines of the later do not cross the outer text of the earlier. */
  readonly homeless: readonly Pt[];
}

function settle(hand: readonly Feature[], others: readonly Feature[], make: (point: Pt) => Linear, style: Style): Hand {
  const size = sizes(style);
  const cramped = others.some(({ point }) => {
    const { length, width } = extent(make(point), style);
    return !textFits(length, width, size);
  });
  const placed: { point: Pt; placement: Placement }[] = [];
  const homeless: Pt[] = [];
  hand.forEach(({ point, distance }, i) => {
    const gapToNext = (hand[i + 1]?.distance ?? Infinity) - distance;
    const datumFree = others.length === 0 || (!cramped && others.length <= placed.length);
    const placement = textPlace(make(point), gapToNext, datumFree, style);
    if (placement) placed.push({ point, placement });
    else homeless.unshift(point);
  });
  return { placed, homeless };
}

/**
 * Dimensions from one datum, one level each, the shortest nearest to the part. Features on both hands of the datum share
 * levels. A dimension whose text has no place on its own level moves to a level outside all others.
 *
 * ```
 *     |<--------- 120 --------->|
 *     |<---- 80 ---->|          |
 *     |              |          |
 *   datum            o          o
 * ```
 *
 * From a datum at the end of a part text meets neither text nor line. Not handled: with crowded features on both hands an
 * extension line on its way out to an outer level may cross the text of an inner one; give each hand its own side then.
 *
 * @throws RangeError when no point is away from the datum.
 */
export function baseline(
  points: readonly Pt[],
  datum: Pt,
  side: StackSide,
  style: Style,
  options: StackOptions = {},
): Stack {
  const { layer, edge = edgeOf([...points, datum], side), level = 0 } = options;
  const right = features(points, datum, side, 1);
  const left = features(points, datum, side, -1);
  if (right.length + left.length === 0) {
    throw new RangeError(`none of ${points.length} points is away from the datum ${datum[0]}, ${datum[1]}`);
  }
  const make = (step: number) => (point: Pt) =>
    levelDim(datum, point, side, levelAt(side, edge, level + step, style), layer);
  const hands = [settle(right, left, make(0), style), settle(left, right, make(0), style)];
  const inner = Math.max(...hands.map(({ placed }) => placed.length));
  const outer = Math.max(...hands.map(({ homeless }) => homeless.length));
  const dims = hands.flatMap(({ placed, homeless }) => [
    ...placed.map(({ point, placement }, i): Linear => ({ ...make(i)(point), placement })),
    ...homeless.map((point, i): Linear => ({ ...make(inner + i)(point), placement: { text: 'after' } })),
  ]);
  return { dims, levels: inner + outer };
}
