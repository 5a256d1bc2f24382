import type { Mm } from '../../../units/mm.ts';

/** A rectangle of a board: mm from its reference end and its reference edge. */
export interface Place {
  readonly x: Mm;
  readonly y: Mm;
  readonly length: Mm;
  readonly width: Mm;
}

/** A part where it lies in its board. */
export interface PlacedPart extends Place {
  readonly part: string;
}

/** `rip` runs along the grain (table saw), `crosscut` across it (mitre saw). */
export type CutKind = 'rip' | 'crosscut';

/**
 * One saw cut right through a piece. Piece 0 is the board; a cut makes a piece on the side of the datum (`keeps`) and one
 * beyond the blade (`leaves`), each with the next free number, unless the blade takes all that is there.
 */
export interface SawCut {
  readonly kind: CutKind;
  /** Which piece is cut. */
  readonly piece: number;
  /** mm from the datum of the board to the near side of the blade; the blade takes the plan's `kerf` from there away. */
  readonly at: Mm;
  /** mm from the near end or edge of the piece that is cut, as it is then, to the blade: what stop or fence are set to. */
  readonly stop: Mm;
  readonly keeps?: number;
  readonly leaves?: number;
}

/** What is left of a board and worth a place in the rack. */
export interface Offcut extends Place {
  readonly name: string;
}

/** One board cut up: first all cuts of the kind `first` through the whole board, then the other kind, then trimming. */
export interface BoardPlan {
  readonly board: string;
  readonly first: CutKind;
  /** From the reference end, then from the reference edge. */
  readonly placed: readonly PlacedPart[];
  /** In the order in which they are made. */
  readonly cuts: readonly SawCut[];
  readonly offcuts: readonly Offcut[];
  /** Area of the parts over the area of the board, 0 to 1. */
  readonly yield: number;
}

export interface CutPlan {
  /** In the order of their ids. */
  readonly boards: readonly BoardPlan[];
  /** mm that the plan allows for a cut: the kerf, rounded up to the step of the rule. */
  readonly kerf: Mm;
  /** Sum of the costs of the boards that are opened. */
  readonly cost: number;
  /** Area of all parts over the area of the opened boards, 0 to 1. */
  readonly yield: number;
}

/** To stand beside every gap. */
export const BOUND_HOLDS_FOR =
  'the bound holds for patterns of two stages and a trimming cut only; another way of cutting may need less';
