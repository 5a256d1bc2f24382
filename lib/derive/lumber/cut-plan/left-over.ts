import type { Misfit, MisfitReason } from './cut-search.ts';
import { take } from './pattern.ts';
import { demandOf, stockOf, type Work } from './work.ts';

/** What stays over when every board is filled in turn. */
export function leftOver(work: Work, reason: MisfitReason): Misfit[] {
  const { grid } = work;
  const left = fillAll(work);
  return grid.parts.flatMap(({ members, length, width }, i) => {
    const wanted = { length: length * grid.step, width: width * grid.step };
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
