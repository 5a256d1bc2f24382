import type { Mm } from '../../../units/mm.ts';
import type { CutPlan } from './cut-plan.ts';

/** A part that cannot be cut from these boards. */
export interface Misfit {
  readonly part: string;
  /** Pieces that find no place. */
  readonly count: number;
  /** mm of length and width missing on the board that comes nearest; 0 when that is not what is wrong. */
  readonly short: Mm;
  readonly narrow: Mm;
  /** The board that comes nearest; absent when there are no boards. */
  readonly nearest?: string;
  /** The smallest clear board that would do: mm. */
  readonly wanted: { readonly length: Mm; readonly width: Mm };
  /** The sentence for the maker. */
  readonly because: string;
}

/** `searching`: more steps may help. `optimal`: nothing cheaper of this class exists. `done`: the search has ended with a gap. */
export type SearchState = 'searching' | 'optimal' | 'done' | 'impossible';

/** What is known so far. */
export interface CutProgress {
  readonly state: SearchState;
  /** Cost of the best plan; Infinity while there is none. */
  readonly value: number;
  /** No plan of this class of patterns costs less. */
  readonly bound: number;
  /** (value - bound) / bound. */
  readonly gap: number;
  readonly steps: number;
  readonly plan?: CutPlan;
  /** Why there is no plan, when the state is `impossible`, or what the best effort leaves over. */
  readonly misfits: readonly Misfit[];
}

/** A search that can be carried on, shown and stopped after every step. */
export interface CutSearch {
  /** Carries on by so many steps (a step is one pricing round, one dive or one try at improving), fewer when it ends. */
  advance(steps: number): CutProgress;
  /** Frees the solver's memory; the search cannot be carried on afterwards. */
  dispose(): void;
}
