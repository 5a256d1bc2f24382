import { fill } from './fill.ts';
import { costOf, type Pattern, yieldOf } from './pattern.ts';
import { stockOf, submit, type Work } from './work.ts';

/** Boards emptied at once: from this many up to that many more, few of them more often. */
const LEAST_EMPTIED = 2;
const MORE_EMPTIED = 5;

/** Share of tries that empty boards by lot; the others prefer boards with much waste. */
const BY_LOT = 0.35;

/** How much lot moves a board among the others, as yield. */
const YIELD_NOISE = 0.12;

/** Other boards offered for the refill. */
const OTHERS = 6;

/** Fillings tried in one step. */
const TRIES = 3;

/** A worse plan by this share of its cost may be walked through; dearer than `BACK` the walk returns to the best. */
const WORSE = 0.002;
const BACK = 1.006;

/** The plan that the walk stands at. */
export interface Walk {
  plan: readonly Pattern[];
}

/** One step of improving: empty a few boards and fill them again, keep what is cheaper or hardly dearer. */
export function improve(work: Work, walk: Walk, values: Float64Array): void {
  const { grid, chance } = work;
  const cost = costOf(grid, walk.plan);
  const emptied = chooseEmptied(work, walk.plan);
  const gone = walk.plan.filter((_, i) => emptied.has(i));
  const kept = walk.plan.filter((_, i) => !emptied.has(i));
  const demand = grid.parts.map((_, i) => gone.reduce((sum, p) => sum + p.counts[i]!, 0));
  const free = offered(work, kept, gone);
  const below = costOf(grid, gone) + WORSE * cost * chance() * chance();
  for (let n = 0; n < TRIES; n++) {
    const refilled = fill(work, { demand, free, values, noise: 0.03 + 0.4 * chance() * chance(), below });
    if (!refilled) continue;
    walk.plan = [...kept, ...refilled];
    submit(work, walk.plan);
    return;
  }
  if (work.best && cost > work.value * BACK) walk.plan = work.best;
}

function chooseEmptied({ grid, chance }: Work, plan: readonly Pattern[]): ReadonlySet<number> {
  const count = Math.min(plan.length, LEAST_EMPTIED + Math.floor(chance() * chance() * MORE_EMPTIED));
  if (chance() < BY_LOT) return new Set(Array.from({ length: count }, () => Math.floor(chance() * plan.length)));
  const ranked = plan.map((p, i) => ({ i, rank: yieldOf(grid, p) + YIELD_NOISE * chance() }));
  ranked.sort((a, b) => a.rank - b.rank);
  return new Set(ranked.slice(0, count).map((r) => r.i));
}

/** Boards for the refill: those emptied and a few others, by lot. */
function offered({ grid, chance }: Work, kept: readonly Pattern[], gone: readonly Pattern[]): number[] {
  const free = stockOf(grid);
  for (const { board } of kept) free[board]!--;
  const own = new Set(gone.map((p) => p.board));
  const others = free.flatMap((n, b) => (n > 0 && !own.has(b) ? [b] : []));
  while (others.length > OTHERS) others.splice(Math.floor(chance() * others.length), 1);
  return free.map((n, b) => (own.has(b) || others.includes(b) ? n : 0));
}
