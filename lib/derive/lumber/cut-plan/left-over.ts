import type { Misfit, MisfitReason } from './cut-search.ts';
import { fill } from './fill.ts';
import type { Grid } from './grid.ts';
import { take } from './pattern.ts';
import { pricer } from './pricer.ts';
import { demandOf, stockOf, type Work } from './work.ts';

/** One more board is looked for up to this many times the length of the longest. */
const TIMES = 8;

/**
 * What stays over when every board is filled in turn, and one clear board, as wide as the widest, that would take it.
 */
export function leftOver(work: Work, reason: MisfitReason): Misfit[] {
  const { grid } = work;
  const left = fillAll(work);
  const wanted = oneMore(grid, work, left);
  return grid.parts.flatMap(({ members }, i) => {
    let open = left[i]!;
    return [...members].reverse().flatMap(({ id, count }): Misfit[] => {
      const missing = Math.min(open, count);
      open -= missing;
      return missing > 0 ? [{ part: id, count: missing, reason, short: 0, narrow: 0, wanted }] : [];
    });
  });
}

/** Fills all boards with the most area they take; returns what no board takes. */
function fillAll({ grid, pricer: price }: Work): number[] {
  const left = demandOf(grid);
  const free = stockOf(grid);
  for (;;) {
    const values = grid.parts.map((p, i) => (left[i]! > 0 ? p.area : 0));
    price.prepare(values, left);
    let [most, best] = [0, undefined as ReturnType<typeof take> | undefined];
    free.forEach((n, b) => {
      if (n <= 0 || price.best(b) <= most) return;
      const pattern = take(grid, price.pattern(), [...left]);
      const area = pattern.counts.reduce((sum, c, i) => sum + c * grid.parts[i]!.area, 0);
      if (area > most) [most, best] = [area, pattern];
    });
    if (!best) return left;
    take(grid, best, left);
    free[best.board]!--;
  }
}

/** The shortest clear board, as wide as the widest there is (or as the widest part left), that takes all that is left. */
function oneMore(grid: Grid, work: Work, left: readonly number[]): Misfit['wanted'] {
  const open = grid.parts.filter((_, i) => left[i]! > 0);
  const width = Math.max(...grid.boards.map((b) => b.width), ...open.map((p) => p.width), 0);
  let low = Math.max(...open.map((p) => p.length), 0) - 1;
  let high = TIMES * Math.max(...grid.boards.map((b) => b.length), low + 1);
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (takesAll(grid, work, left, middle, width)) high = middle;
    else low = middle;
  }
  return { length: high * grid.step, width: width * grid.step };
}

function takesAll(grid: Grid, work: Work, left: readonly number[], length: number, width: number): boolean {
  const board = { length, width, area: length * width, cost: 1, zones: [], ids: ['one more'] };
  const parts = grid.parts.map((p, i) => ({ ...p, count: left[i]! }));
  const small = { ...grid, parts, boards: [board] };
  const values = Float64Array.from(parts, (p) => p.area);
  const task = { demand: left, free: [1], values, noise: 0, below: Infinity };
  return fill({ ...work, grid: small, pricer: pricer(small), spare: pricer(small), pool: [] }, task) !== undefined;
}
