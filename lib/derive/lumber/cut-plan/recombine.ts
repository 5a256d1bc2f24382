import { type Pattern, take } from './pattern.ts';
import { demandOf, stockOf, submit, type Work } from './work.ts';

/** Patterns in the program at most, those with the least reduced cost. */
const MOST_PATTERNS = 2500;

/** Nodes of the search tree in one step. */
const NODES = 300;

/** Combines all patterns seen anew, as a program in whole numbers that starts from the best plan. */
export function recombine(work: Work, worth: Float64Array): void {
  const { grid, solver, best } = work;
  if (!best) return;
  const patterns = collect(work, best, worth);
  const program = solver.program();
  try {
    const demand = demandOf(grid);
    for (const d of demand) program.addRow(d, Infinity);
    for (const n of stockOf(grid)) program.addRow(-Infinity, n);
    for (const { board, counts } of patterns) {
      const rows = counts.flatMap((n, i) => (n > 0 ? [i] : []));
      const values = [...rows.map((i) => counts[i]!), 1];
      const { cost, ids } = grid.boards[board]!;
      program.makeWhole(program.addColumn(cost, 0, ids.length, { rows: [...rows, demand.length + board], values }));
    }
    const start = patterns.map((p) => best.filter((b) => b === p).length);
    const { columns } = program.solveWhole({ nodes: NODES, gap: 1e-4, start });
    if (columns) keep(work, patterns, columns);
  } finally {
    program.dispose();
  }
}

function collect({ grid, master, pool }: Work, best: readonly Pattern[], worth: Float64Array): Pattern[] {
  const byCounts = new Map<string, Pattern>();
  for (const found of [...best, ...master.patterns, ...pool]) {
    const pattern = grid.groups > 0 ? take(grid, found, demandOf(grid)) : found;
    if (pattern.spots.length > 0) byCounts.set(`${pattern.board}:${pattern.counts.join()}`, pattern);
  }
  const reduced = ({ board, counts }: Pattern): number =>
    counts.reduce((cost, n, i) => cost - n * worth[i]!, grid.boards[board]!.cost);
  const own = new Set(best);
  const others = [...byCounts.values()].filter((p) => !own.has(p));
  others.sort((a, b) => reduced(a) - reduced(b));
  return [...own, ...others.slice(0, MOST_PATTERNS)];
}

function keep(work: Work, patterns: readonly Pattern[], times: Float64Array): void {
  const left = demandOf(work.grid);
  const plan = patterns.flatMap((p, j) =>
    Array.from({ length: Math.round(times[j]!) }, () => take(work.grid, p, left)),
  );
  if (left.every((n) => n === 0))
    submit(
      work,
      plan.filter((p) => p.spots.length > 0),
    );
}
