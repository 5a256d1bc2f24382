import { aloneReserve } from './alone-reserve.ts';
import { BOTTOM, SHOW, SINGLE } from './role-table.ts';
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

/** The label of roles given to boards; `tones` are the boards from the lightest to the darkest. */
export function labelOf(model: StripModel, tones: readonly number[], roles: Uint8Array, range: number): Label {
  const having = (role: number): number[] => tones.filter((i) => (roles[i]! & role) !== 0);
  const shows = having(SHOW | SINGLE);
  const bottoms = having(BOTTOM);
  let cost = 0;
  for (const i of shows) cost += Math.min(model.showCost[2 * i]!, model.showCost[2 * i + 1]!);
  for (const i of bottoms) cost += model.bottomCost[i]!;
  return { shows, alone: new Set(having(SINGLE)), bottoms, cost, range };
}

/**
 * What the flips cost at least over each show board on its better side: where bark up and bark down alternate but for v pairs
 * of neighbors, their counts differ by at most v + 1. For every count up, the boards that lose least lie so.
 */
export function flipExtra(model: StripModel, { shows }: Label): number {
  const rings = model.prices.of.rings;
  if (rings === 0) return 0;
  const { showCost } = model;
  const gains = shows.map((i) => showCost[2 * i]! - showCost[2 * i + 1]!).sort((a, b) => a - b);
  // Cost of `up` boards bark up, over the better sides: a board of gain g loses max(0, g) up, max(0, -g) down.
  let extra = gains.reduce((sum, g) => sum + Math.max(0, -g), 0);
  let best = Number.POSITIVE_INFINITY;
  for (let up = 0; up <= shows.length; up++) {
    const uneven = Math.max(0, Math.abs(2 * up - shows.length) - 1);
    if (extra + rings * uneven < best) best = extra + rings * uneven;
    if (up < shows.length) extra += gains[up]!;
  }
  return Number.isFinite(best) ? Math.max(0, best) : 0;
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

/** Cost of the reserve missing below the cap, at most a given one. */
export function reserveCost(model: StripModel, reserve: number): number {
  const cap = model.problem.settings.reserveCap;
  return model.prices.of.reserve * model.prices.counted('reserve', Math.max(0, cap - reserve));
}
