import type { Misfit, MisfitReason } from './cut-search.ts';
import { dive } from './dive.ts';
import { cheapestArea, FEW_BOARDS, fill } from './fill.ts';
import { improve, type Walk } from './improve.ts';
import { leftOver } from './left-over.ts';
import { prove, type RuledOut } from './prove.ts';
import { recombine } from './recombine.ts';
import { type RootBound, rootBound } from './root-bound.ts';
import { wholeBoardsBound } from './whole-boards.ts';
import { demandOf, EQUAL, isProved, stockOf, submit, type Work } from './work.ts';

/** Rounds of pricing before the search goes on with the bound it has. */
const MOST_ROUNDS = 400;

/** Dives, the first straight, the others shaken. */
const DIVES = 2;

/** Fillings tried while there is no plan. */
const FIRST_FILLS = 20;

/** Tries at improving before the search ends, and how many of them lie between two recombinations. */
const MOST_TRIES = 50_000;
const BETWEEN = 150;

/** The proof set by set, for so few pieces: after so many tries at improving, with so many nodes for a set of boards. */
interface Proofs {
  readonly pieces: number;
  readonly after: ReadonlyMap<number, number>;
}

/** Of 20 pieces a set takes a second or two; of 30 some seconds with few nodes, half a minute with many (measured). */
const PROOFS: readonly Proofs[] = [
  { pieces: 20, after: new Map([[60, 20_000]]) },
  {
    pieces: 30,
    after: new Map([
      [500, 1_000],
      [1_500, 20_000],
    ]),
  },
];

/**
 * The search from bound to best plan; each yield ends a step. Ends when the plan is proved or tries run out; what it
 * returns are the parts left over when there is no plan.
 */
export function* phases(work: Work): Generator<void, readonly Misfit[]> {
  const cheapest = cheapestArea(work.grid);
  yield* quickFill(
    work,
    Float64Array.from(work.grid.parts, (p) => p.area * cheapest),
  );
  const root = yield* rootBound(work, MOST_ROUNDS);
  if (whyNone(work) === 'too little lumber') return leftOver(work, 'too little lumber');
  wholeBoardsBound(work, root.rounds);
  yield;
  const values = Float64Array.from(work.grid.parts, (p, i) => 0.5 * root.answer.worth[i]! + 0.52 * p.area * cheapest);
  const proof = proofOf(work, root.rounds, values);
  for (let n = 0; n < DIVES && !isProved(work); n++) yield* dive(work, root.answer, values, n > 0);
  yield* firstFills(work, values);
  for (const n of proof.after) if (!work.best) yield* proof.at(n);
  if (!work.best) return leftOver(work, whyNone(work));
  const walk: Walk = { plan: work.best };
  for (let n = 1; n <= MOST_TRIES && !isProved(work); n++) {
    improve(work, walk, values);
    yield* proof.at(n);
    if (work.grid.boards.length <= FEW_BOARDS && n % BETWEEN === 0) recombine(work, root.answer.worth);
    yield;
  }
  return [];
}

/** The proof set by set, tried at its times: it remembers what it has ruled out. Of many pieces there is none. */
function proofOf(work: Work, rounds: RootBound['rounds'], values: Float64Array) {
  const pieces = demandOf(work.grid).reduce((sum, n) => sum + n, 0);
  const after = PROOFS.find((one) => pieces <= one.pieces)?.after ?? new Map<number, number>();
  const none: RuledOut = [];
  return {
    after: [...after.keys()],
    *at(n: number): Generator<void, void> {
      const nodes = after.get(n);
      if (nodes) yield* prove(work, rounds, values, nodes, none);
    },
  };
}

/** A plan at once, for whoever stops the search early: parts by their area. */
function* quickFill(work: Work, values: Float64Array): Generator<void, void> {
  const task = { demand: demandOf(work.grid), free: stockOf(work.grid), values, noise: 0, below: Infinity };
  const plan = fill(work, task);
  if (plan) submit(work, plan);
  yield;
}

/** Fills all boards with ever more noise, until there is some plan. */
function* firstFills(work: Work, values: Float64Array): Generator<void, void> {
  for (let n = 0; n < FIRST_FILLS && !work.best; n++) {
    const task = { demand: demandOf(work.grid), free: stockOf(work.grid), values, noise: 0.1 * n, below: Infinity };
    const plan = fill(work, task);
    if (plan) submit(work, plan);
    yield;
  }
}

/** No plan costs more than all boards together: a bound above that proves that there is none. */
function whyNone({ grid, bound }: Work): MisfitReason {
  const all = grid.boards.reduce((sum, b) => sum + b.cost * b.ids.length, 0);
  return bound > all + EQUAL ? 'too little lumber' : 'no place found';
}
