import type { StripModel } from './strip-model.ts';

/** A board (-1 none) may lie in a cell: shows of all strips first, then their bottoms, then the pile. */
export function fits(model: StripModel, i: number, cell: number): boolean {
  const { strips } = model;
  const { layers } = model.problem.settings;
  if (i < 0) return cell >= 2 * strips || (cell >= strips && layers !== 'two');
  const use = model.uses[i]!;
  if (cell >= 2 * strips) return use.idle;
  const layer = cell < strips ? use.show : use.bottom;
  return layer && ((use.strips >> (cell % strips)) & 1) === 1;
}

/** A random first filling; what is pinned goes first. */
export function firstCells(model: StripModel, random: () => number): Int32Array {
  const { strips } = model;
  const n = model.boards.length;
  const cells = new Int32Array(Math.max(n + strips, 3 * strips)).fill(-1);
  const shuffled = model.boards.map((_, i) => i);
  for (let i = n - 1; i > 0; i--) {
    const k = Math.floor(random() * (i + 1));
    [shuffled[i], shuffled[k]] = [shuffled[k]!, shuffled[i]!];
  }
  const taken = new Uint8Array(cells.length);
  const choices = (i: number): number => cells.reduce((sum, _, cell) => sum + (fits(model, i, cell) ? 1 : 0), 0);
  const strict = [...shuffled].sort((a, b) => choices(a) - choices(b));
  for (const i of strict) {
    const cell = cells.findIndex((_, at) => !taken[at] && fits(model, i, at));
    if (cell < 0) continue;
    taken[cell] = 1;
    cells[cell] = i;
  }
  return cells;
}
