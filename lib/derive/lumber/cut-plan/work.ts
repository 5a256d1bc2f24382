import type { Solver } from '../master.ts';

import type { ColumnMaster } from './column-master.ts';
import type { Grid } from './grid.ts';
import { costOf, type Pattern } from './pattern.ts';
import type { Pricer } from './pricer.ts';

/** What a search holds between its steps. */
export interface Work {
  readonly grid: Grid;
  readonly solver: Solver;
  readonly pricer: Pricer;
  /** For a look aside, while the other keeps its tables. */
  readonly spare: Pricer;
  readonly master: ColumnMaster;
  /** The search's own random numbers, 0 to 1. */
  readonly chance: () => number;
  /** Scaled cost below which no plan of the class exists. */
  bound: number;
  /** Scaled cost of `best`. */
  value: number;
  best?: readonly Pattern[];
  /** Patterns worth remembering when boards are few. */
  readonly pool: Pattern[];
}

/** Scaled costs nearer than this are equal: the mean board costs 100. */
export const EQUAL = 1e-6;

/** Keeps a plan when it is the best so far. */
export function submit(work: Work, patterns: readonly Pattern[]): boolean {
  const value = costOf(work.grid, patterns);
  if (value >= work.value - EQUAL) return false;
  work.value = value;
  work.best = patterns;
  return true;
}

export const isProved = ({ value, bound }: Work): boolean => value <= bound * (1 + EQUAL);

export const demandOf = ({ parts }: Grid): number[] => parts.map((p) => p.count);

export const stockOf = ({ boards }: Grid): number[] => boards.map((b) => b.ids.length);
