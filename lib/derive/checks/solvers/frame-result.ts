import type { Dof, EndForces, Ends, Move, Reaction } from './frame-model.ts';

/** One load case, worked out; keys are names of nodes and members. */
export interface CaseResult {
  readonly name: string;
  readonly moves: ReadonlyMap<string, Move>;
  readonly ends: ReadonlyMap<string, Ends<EndForces>>;
  /** Of the nodes that are held. */
  readonly reactions: ReadonlyMap<string, Reaction>;
}

/** A way in which a frame moves though nothing bends. */
export interface Loose {
  /** The node that moves most, and in which way. */
  readonly node: string;
  readonly direction: Dof;
  /** The whole movement, 1 mm (or 1°, where nodes only turn) at the named node. */
  readonly moves: ReadonlyMap<string, Move>;
}

/** A mechanism is a result as good as any: it says what falls over. */
export type FrameResult =
  | {
      readonly kind: 'solved';
      readonly cases: readonly CaseResult[];
      /** Nodes that turn freely and move nothing, and that no load turns: their turn is printed as 0. */
      readonly spins: readonly Loose[];
    }
  | { readonly kind: 'mechanism'; readonly loose: readonly Loose[] };
