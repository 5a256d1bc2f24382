import type { Mm } from '../../../units/mm.ts';
import type { CutPlan } from './cut-plan.ts';

/**
 * Why parts are left over. `too large`: no board is long and wide enough. `zones in the way`: boards are, but not between
 * their zones. `too little lumber`: each fits, but not all of them; proved by the bound. `no place found`: the search
 * placed the others; not proved that these cannot be placed.
 */
export type MisfitReason = 'too large' | 'zones in the way' | 'too little lumber' | 'no place found';

/** A part that is not cut, and what would help. */
export interface Misfit {
  readonly part: string;
  /** Pieces left over. */
  readonly count: number;
  readonly reason: MisfitReason;
  /** mm missing on the board that comes nearest; 0 when size is not what is wrong. */
  readonly short: Mm;
  readonly narrow: Mm;
  /** The board that comes nearest; absent when there are no boards. */
  readonly nearest?: string;
  /** mm of the clear blank that each piece wants. */
  readonly wanted: { readonly length: Mm; readonly width: Mm };
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
