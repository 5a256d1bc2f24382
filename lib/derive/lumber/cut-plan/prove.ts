import type { Program } from '../master.ts';
import { compactPacking } from './compact-model.ts';
import { fill } from './fill.ts';
import { FEW_ENOUGH, packFew } from './pack-few.ts';
import type { PricedRound } from './root-bound.ts';
import { valueRows } from './whole-boards.ts';
import { demandOf, EQUAL, isProved, submit, type Work } from './work.ts';

/** Fillings tried on a set of boards before the compact model is asked. */
const FILLS = 40;

/** Nodes to find the cheapest set of boards: the program is tiny. */
const SET_NODES = 20_000;

/** Sets of boards looked at before the search gives up the proof. */
const MOST_SETS = 400;

/** Sets of boards, by their numbers counted out, that cannot take all parts. */
export type RuledOut = (readonly number[])[];

/**
 * The proof for few boards and parts: the cheapest set of boards that the value rows leave possible is the bound. Either
 * the parts can be cut from it, and it is the optimum; or they cannot, and every set within it is ruled out,
 *
 *     sum over boards outside the set of y(b) >= 1,
 *
 * and the next cheapest is looked at. One step is one set. A set that stays undecided with so many nodes ends the proof,
 * but dearer sets are still looked at for a better plan. What is ruled out stays so when it is tried again with more.
 */
export function* prove(
  work: Work,
  rounds: readonly PricedRound[],
  values: Float64Array,
  nodes: number,
  none: RuledOut,
): Generator<void, void> {
  const { grid } = work;
  const each = grid.boards.flatMap((b, kind) => b.ids.map(() => kind));
  const program = work.solver.program();
  try {
    const columns = startSets(program, work, each, rounds);
    for (const set of none) ruleOut(program, columns, set);
    let undecided = false;
    for (let n = 0; n < MOST_SETS && !isProved(work); n++) {
      const next = cheapestSet(program, each);
      if (!next) return;
      if (!undecided) work.bound = Math.max(work.bound, Math.min(work.value, next.bound));
      if (next.bound >= work.value - EQUAL) return;
      const kinds = next.set.map((b) => each[b]!);
      const verdict = decide(work, kinds, values, nodes);
      yield;
      if (verdict === 'packed') return;
      if (verdict === 'none') none.push(next.set);
      undecided ||= verdict === 'unknown';
      ruleOut(program, columns, next.set);
    }
  } finally {
    program.dispose();
  }
}

/** Each board is opened or not, and the opened ones bring the value of the demand in every round. */
function startSets(
  program: Program,
  { grid }: Work,
  each: readonly number[],
  rounds: readonly PricedRound[],
): number[] {
  const columns = each.map((kind) => {
    const column = program.addColumn(grid.boards[kind]!.cost, 0, 1, { rows: [], values: [] });
    program.makeWhole(column);
    return column;
  });
  for (const row of valueRows(rounds)) {
    const r = program.addRow(1, Infinity);
    columns.forEach((column, b) => {
      program.changeEntry(r, column, row[each[b]!]!);
    });
  }
  return columns;
}

/** The cheapest set of boards left, and a bound on its cost; undefined when it stays unknown. */
function cheapestSet(program: Program, each: readonly number[]): { set: number[]; bound: number } | undefined {
  const { bound, columns, proved } = program.solveWhole({ nodes: SET_NODES });
  if (!proved) return undefined;
  if (!columns) return { set: [], bound: Infinity };
  return { set: each.flatMap((_, b) => (Math.round(columns[b]!) === 1 ? [b] : [])), bound: bound - 1e-7 * bound };
}

function ruleOut(program: Program, columns: readonly number[], set: readonly number[]): void {
  const row = program.addRow(1, Infinity);
  columns.forEach((column, b) => {
    if (!set.includes(b)) program.changeEntry(row, column, 1);
  });
}

/** Can all parts be cut from these boards? A plan that is found is kept. A few pieces are tried in every way, zones and all. */
function decide(
  work: Work,
  kinds: readonly number[],
  values: Float64Array,
  nodes: number,
): 'packed' | 'none' | 'unknown' {
  const { grid, solver } = work;
  const free = grid.boards.map((_, b) => kinds.filter((k) => k === b).length);
  for (let n = 0; n < FILLS; n++) {
    const noise = 0.03 + 0.5 * work.chance() * work.chance();
    const plan = fill(work, { demand: demandOf(grid), free, values, noise, below: Infinity });
    if (plan) {
      submit(work, plan);
      return 'packed';
    }
  }
  if (demandOf(grid).reduce((sum, n) => sum + n, 0) <= FEW_ENOUGH) {
    const packed = packFew(grid, kinds);
    if (packed) submit(work, packed);
    return packed ? 'packed' : 'none';
  }
  const { verdict, patterns } = compactPacking(solver, grid, kinds, nodes);
  if (verdict !== 'packed') return verdict;
  if (grid.groups > 0 || kinds.some((k) => grid.boards[k]!.zones.length > 0)) return 'unknown';
  submit(
    work,
    patterns.filter((p) => p.spots.length > 0),
  );
  return 'packed';
}
