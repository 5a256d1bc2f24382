import type { Program, Solver } from '../master.ts';
import type { Grid } from './grid.ts';
import type { Pattern } from './pattern.ts';

/** The linear program's optimum, read as prices. */
export interface MasterAnswer {
  readonly value: number;
  /** Demand that the patterns leave open, in pieces. */
  readonly open: number;
  /** How much of each pattern is taken, by place in `patterns`. */
  readonly shares: Float64Array;
  /** What one more piece of each part would cost; 0 or above. */
  readonly worth: Float64Array;
  /** What one more board of each kind would save; 0 or above. */
  readonly scarcity: Float64Array;
}

/** All patterns known, and the linear program that mixes them. */
export interface ColumnMaster {
  readonly patterns: readonly Pattern[];
  /** False when the same counts from the same board are there already. */
  add(pattern: Pattern): boolean;
  solve(): MasterAnswer;
  /** At least so many of a pattern (a dive fixes it); 0 frees it. */
  fix(pattern: number, times: number): void;
  dispose(): void;
}

/** A missing piece costs so many times the dearest board: more than any plan would pay. */
const OPEN_COST = 20;

/**
 * Master problem: least cost of boards, every part at least as often as demanded, every board at most as often as it is
 * there. Its first columns are missing pieces at a price that nothing beats, so that it always has a solution.
 */
export function columnMaster(solver: Solver, grid: Grid): ColumnMaster {
  const program = solver.program();
  const { parts, boards } = grid;
  const patterns: Pattern[] = [];
  const seen = new Set<string>();
  const dearest = boards.reduce((most, b) => Math.max(most, b.cost), 1);
  for (const part of parts) program.addRow(part.count, Infinity);
  for (const board of boards) program.addRow(-Infinity, board.ids.length);
  parts.forEach((_, i) => {
    program.addColumn(OPEN_COST * dearest, 0, Infinity, { rows: [i], values: [1] });
  });
  return {
    patterns,
    add(pattern) {
      const key = `${pattern.board}:${pattern.counts.join()}`;
      if (seen.has(key)) return false;
      seen.add(key);
      patterns.push(pattern);
      addPattern(program, grid, pattern);
      return true;
    },
    solve: () => answerOf(program, parts.length),
    fix: (pattern, times) => program.limitColumn(parts.length + pattern, times, Infinity),
    dispose: () => program.dispose(),
  };
}

function addPattern(program: Program, { parts, boards }: Grid, { board, counts }: Pattern): void {
  const rows = counts.flatMap((n, i) => (n > 0 ? [i] : []));
  program.addColumn(boards[board]!.cost, 0, Infinity, {
    rows: [...rows, parts.length + board],
    values: [...rows.map((i) => counts[i]!), 1],
  });
}

function answerOf(program: Program, parts: number): MasterAnswer {
  const answer = program.solve();
  if (!answer) throw new RangeError('a master problem with missing pieces has no solution');
  const { value, columns, prices } = answer;
  return {
    value,
    open: columns.subarray(0, parts).reduce((sum, n) => sum + n, 0),
    shares: columns.slice(parts),
    worth: prices.subarray(0, parts).map((p) => Math.max(0, p)),
    scarcity: prices.subarray(parts).map((p) => Math.max(0, -p)),
  };
}
