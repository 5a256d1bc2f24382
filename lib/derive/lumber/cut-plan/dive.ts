import type { MasterAnswer } from './column-master.ts';
import { fill } from './fill.ts';
import { costOf, type Pattern, take } from './pattern.ts';
import { demandOf, EQUAL, stockOf, submit, type Work } from './work.ts';

/** The last so many mean boards of cost are left to filling. */
const TAIL = 6.5 * 100;

/** Tries at filling the tail. */
const TAIL_TRIES = 12;

/** A pattern that the master takes this much of is fixed along with the best one. */
const NEARLY_WHOLE = 0.9;

/** Rounds of pricing for the rest after each fixing. */
const PRICINGS = 2;

interface Dive {
  readonly left: number[];
  readonly free: number[];
  readonly fixed: number[];
  /** How often each pattern is fixed. */
  readonly times: Map<number, number>;
  cost: number;
}

/**
 * A plan from the mixture: fix the patterns that the master takes nearly whole, price the rest anew, mix again, and so
 * down until few boards are left; these are filled. `shaken` dives go another way each time. One step is one fixing.
 */
export function* dive(work: Work, root: MasterAnswer, values: Float64Array, shaken: boolean): Generator<void, void> {
  const { grid, master } = work;
  const state: Dive = { left: demandOf(grid), free: stockOf(grid), fixed: [], times: new Map(), cost: 0 };
  let answer = shaken ? master.solve() : root;
  while (answer.value - state.cost >= TAIL) {
    for (let n = 0; n < PRICINGS && state.fixed.length > 0; n++) {
      if (priceRest(work, answer, state) === 0) break;
      answer = master.solve();
    }
    const patterns = candidates(work, answer, state, shaken);
    if (patterns.length === 0) break;
    fixSome(work, answer, state, patterns);
    answer = master.solve();
    yield;
  }
  for (const pattern of state.times.keys()) master.fix(pattern, 0);
  finish(work, state, values);
  yield;
}

/** New patterns for what is left; returns how many joined. */
function priceRest({ grid, pricer, master }: Work, answer: MasterAnswer, { left, free }: Dive): number {
  pricer.prepare(answer.worth, left);
  let added = 0;
  grid.boards.forEach(({ cost }, b) => {
    if (free[b]! <= 0) return;
    if (pricer.best(b) - cost - answer.scarcity[b]! > EQUAL && master.add(pricer.pattern())) added++;
  });
  return added;
}

/** Patterns by their share in the mixture and by how much of them is still of use, best first. */
function candidates({ master, chance }: Work, answer: MasterAnswer, { left, free, times }: Dive, shaken: boolean) {
  const ranked: { pattern: number; rank: number }[] = [];
  answer.shares.forEach((share, j) => {
    const { board, counts } = master.patterns[j]!;
    const more = share - (times.get(j) ?? 0);
    if (more <= EQUAL || free[board]! <= 0) return;
    let [use, all] = [0, 1e-9];
    counts.forEach((n, i) => {
      all += n * answer.worth[i]!;
      use += Math.min(n, left[i]!) * answer.worth[i]!;
    });
    ranked.push({ pattern: j, rank: more * (use / all) ** 3 * (shaken ? 0.7 + 0.6 * chance() : 1) });
  });
  return ranked.sort((a, b) => b.rank - a.rank || a.pattern - b.pattern).map((r) => r.pattern);
}

/** Fixes the best, and behind it all that are nearly whole and fit the rest. */
function fixSome({ grid, master }: Work, answer: MasterAnswer, state: Dive, patterns: readonly number[]): void {
  patterns.forEach((j, n) => {
    const { board, counts } = master.patterns[j]!;
    const more = answer.shares[j]! - (state.times.get(j) ?? 0);
    if (answer.value - state.cost < TAIL || state.free[board]! <= 0) return;
    if (n > 0 && (more < NEARLY_WHOLE || counts.some((c, i) => c > state.left[i]!))) return;
    state.free[board]!--;
    state.fixed.push(j);
    state.times.set(j, (state.times.get(j) ?? 0) + 1);
    state.cost += grid.boards[board]!.cost;
    counts.forEach((c, i) => {
      state.left[i] = Math.max(0, state.left[i]! - c);
    });
    master.fix(j, state.times.get(j)!);
  });
}

function finish(work: Work, { fixed, free }: Dive, values: Float64Array): void {
  const left = demandOf(work.grid);
  const kept = fixed.map((j) => take(work.grid, work.master.patterns[j]!, left)).filter((p) => p.spots.length > 0);
  let tail: readonly Pattern[] | undefined;
  for (let n = 0; n < TAIL_TRIES; n++) {
    const noise = 0.03 + 0.4 * work.chance() * work.chance();
    const below = tail ? costOf(work.grid, tail) : Infinity;
    tail = fill(work, { demand: left, free, values, noise, below }) ?? tail;
  }
  if (tail) submit(work, [...kept, ...tail]);
}
