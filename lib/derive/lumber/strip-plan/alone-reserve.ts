import type { StripModel } from './strip-model.ts';

/** Splits of more boards than this are not looked into. */
const MOST_SPLIT = 10;

/**
 * The most reserve by the boards that are strips alone and too thin for the center line: each lies on one side, the thicker ones
 * farther in. A side with such boards needs other strips (together `rest` mm) to keep its innermost one away from the center
 * line, and to fill what the boards leave of the side. Over all ways to split the boards between the sides.
 */
export function aloneReserve(model: StripModel, pairs: readonly number[], single: readonly number[]): number {
  const thin = single
    .filter((i) => model.thick[i]! < model.base)
    .sort((a, b) => model.thick[b]! - model.thick[a]! || a - b);
  if (thin.length === 0 || thin.length > MOST_SPLIT) return Number.POSITIVE_INFINITY;
  let rest = pairs.reduce((sum, w) => sum + w, 0);
  for (const i of single) if (model.thick[i]! >= model.base) rest += model.width[i]!;
  let best = Number.NEGATIVE_INFINITY;
  // Mirrored splits are equal: the first board lies on the left.
  for (let split = 1; split < 2 ** thin.length; split += 2) {
    best = Math.max(best, splitReserve(model, thin, split, rest));
  }
  return best;
}

interface Side {
  /** Reserve when no other strip lies on the side; each mm of them adds the slope. */
  reserve: number;
  /** Reserve however far out the boards lie. */
  limit: number;
  width: number;
  count: number;
}

function splitReserve(model: StripModel, thin: readonly number[], split: number, rest: number): number {
  const left = sideOf(model, thin, (k) => (split >> k) % 2 === 1);
  const right = sideOf(model, thin, (k) => (split >> k) % 2 === 0);
  const { half, slope } = model;
  const least = Math.max(0, half - left.width);
  const most = rest - Math.max(0, half - right.width);
  if (least > most + 1e-9) return Number.NEGATIVE_INFINITY;
  const even = (right.reserve - left.reserve + slope * rest) / (2 * slope);
  // A side without thin boards sets no limit: all the rest that the side can spare goes to the other.
  const wished = left.count === 0 ? least : right.count === 0 ? most : even;
  const share = Math.min(most, Math.max(least, wished));
  const onLeft = Math.min(left.limit, left.reserve + slope * share);
  return Math.min(onLeft, right.limit, right.reserve + slope * (rest - share));
}

function sideOf(model: StripModel, thin: readonly number[], isHere: (k: number) => boolean): Side {
  const side: Side = { reserve: Number.POSITIVE_INFINITY, limit: Number.POSITIVE_INFINITY, width: 0, count: 0 };
  const here = thin.filter((_, k) => isHere(k));
  const { slope, half, base } = model;
  const narrow = model.problem.settings.leastWidth;
  here.forEach((i, place) => {
    const spare = model.thick[i]! - base;
    side.reserve = Math.min(side.reserve, spare + slope * side.width);
    side.limit = Math.min(side.limit, spare + slope * (half - narrow * (here.length - place)));
    side.width += model.width[i]!;
    side.count++;
  });
  return side;
}
