import { canCarryAlone } from './requirements.ts';
import { BOTTOM, IDLE, SHOW, SINGLE } from './role-table.ts';
import type { StripModel } from './strip-model.ts';

/**
 * The show boards lie between two tones, and a board of either end is among them. The differences between neighbors add up to
 * at least the distance of the two.
 */
export interface ToneWindow {
  /** Places in the boards sorted by tone. */
  readonly low: number;
  readonly high: number;
  /** Cost of that distance. */
  readonly cost: number;
}

/** Boards from the lightest to the darkest. */
export const byTone = (model: StripModel): number[] =>
  model.boards.map((_, i) => i).sort((a, b) => model.tone[a]! - model.tone[b]! || a - b);

/** Every window wide enough for the strips, none when the blank has no room for them; one window without ends when tone costs nothing. */
export function toneWindows(model: StripModel, order: readonly number[]): ToneWindow[] {
  const n = order.length;
  const { strips, prices } = model;
  const tooNarrow = strips * model.problem.settings.leastWidth > 2 * model.half + 1e-9;
  if (n < strips || tooNarrow) return [];
  if (prices.of.tone === 0) return [{ low: 0, high: n - 1, cost: 0 }];
  const windows: ToneWindow[] = [];
  for (let low = 0; low + strips <= n; low++) {
    for (let high = low + strips - 1; high < n; high++) {
      const cost = prices.of.tone * (model.tone[order[high]!]! - model.tone[order[low]!]!);
      windows.push({ low, high, cost });
    }
  }
  return windows;
}

/** Roles of every board in a window, for a reserve of at least `reserve`; a board that may have none makes it empty. */
export function windowRoles(
  model: StripModel,
  order: readonly number[],
  window: ToneWindow,
  reserve: number,
): Uint8Array {
  const roles = new Uint8Array(model.boards.length);
  const { layers } = model.problem.settings;
  const ends = model.prices.of.tone !== 0;
  order.forEach((i, place) => {
    const use = model.uses[i]!;
    const within = place >= window.low && place <= window.high;
    let role = 0;
    if (use.show && within && layers !== 'one') role |= SHOW;
    if (use.show && within && layers !== 'two' && canCarryAlone(model, i, reserve)) role |= SINGLE;
    if (use.bottom) role |= BOTTOM;
    if (use.idle) role |= IDLE;
    const end = ends && (place === window.low || place === window.high);
    roles[i] = end ? role & (SHOW | SINGLE) : role;
  });
  return roles;
}
