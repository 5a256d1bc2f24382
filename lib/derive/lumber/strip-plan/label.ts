import type { StripModel } from './strip-model.ts';

/** Which boards are used for what; their order and pairs are open. */
export interface Label {
  /** Show boards of two layers and single boards. */
  readonly shows: readonly number[];
  readonly alone: ReadonlySet<number>;
  readonly bottoms: readonly number[];
  /** Cost of the boards used, each show board on its better side. */
  readonly cost: number;
  /** Cost of the distance between the lightest and the darkest show board. */
  readonly range: number;
}

const falling = (values: number[]): number[] => values.sort((a, b) => b - a);

/**
 * The most reserve any order of a label can have; undefined when the boards are too narrow together. The strips nearest to the
 * center line fill the blank up to the next inner edge, so the inner edge of strip k + 1 is at most half the k widest strips
 * away; and the k thickest stacks are at most the k thickest show boards on the k thickest bottom boards. For every k:
 *
 *   k · (base + reserve) - slope · Σ inner edges  ≤  the k thickest stacks
 */
export function labelReserve(model: StripModel, { shows, alone, bottoms }: Label): number | undefined {
  const paired = shows.filter((i) => !alone.has(i));
  const single = [...alone];
  const sorted = (of: Float64Array, boards: readonly number[]): number[] => falling(boards.map((i) => of[i]!));
  const below = sorted(model.width, bottoms);
  const pairs = sorted(model.width, paired).map((w, k) => Math.min(w, below[k]!));
  const widths = falling([...pairs, ...single.map((i) => model.width[i]!)]);
  if (widths.reduce((sum, w) => sum + w, 0) < 2 * model.half - 1e-9) return undefined;
  const under = sorted(model.thick, bottoms);
  const double = sorted(model.thick, paired).map((t, k) => t + under[k]!);
  const stacks = falling([...double, ...single.map((i) => model.thick[i]!)]);
  let [most, have, want, filled] = [Number.POSITIVE_INFINITY, 0, 0, 0];
  for (let k = 0; k < stacks.length; k++) {
    have += stacks[k]!;
    want += model.base - (model.slope * filled) / 2;
    most = Math.min(most, (have - want) / (k + 1));
    filled += widths[k]!;
  }
  return Math.min(most, aloneReserve(model, pairs, single));
}

/**
 * The most reserve by the single boards: all strips of two layers and the thicker single boards together fill at most this much
 * of the middle, and the inner edge of the next single board lies no farther out than half of it.
 */
function aloneReserve(model: StripModel, pairs: readonly number[], single: readonly number[]): number {
  const thickest = [...single].sort((a, b) => model.thick[b]! - model.thick[a]!);
  let filled = pairs.reduce((sum, w) => sum + w, 0);
  let most = Number.POSITIVE_INFINITY;
  for (const i of thickest) {
    const away = Math.min(filled / 2, model.half - model.problem.settings.leastWidth);
    most = Math.min(most, model.thick[i]! - model.base + model.slope * Math.max(0, away));
    filled += model.width[i]!;
  }
  return most;
}

/** Cost of the reserve missing below the cap, at most a given one. */
export function reserveCost(model: StripModel, reserve: number): number {
  const cap = model.problem.settings.reserveCap;
  return model.prices.of.reserve * model.prices.counted('reserve', Math.max(0, cap - reserve));
}
