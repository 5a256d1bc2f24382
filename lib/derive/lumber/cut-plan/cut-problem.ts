import type { Mm } from '../../../units/mm.ts';
import type { CutKind } from './cut-plan.ts';

/** Pieces of one size that have to come out of the boards. */
export interface CutPart {
  readonly id: string;
  /** mm along the grain, allowances added. */
  readonly length: Mm;
  /** mm across the grain, allowances added. */
  readonly width: Mm;
  readonly count: number;
  /** Parts with the same word come from one board, all pieces of them (matching posts). */
  readonly together?: string;
}

/** A rectangle of a board that may not end up in a part. */
export interface AvoidZone {
  /** mm from the reference end of the board. */
  readonly from: Mm;
  readonly to: Mm;
  /** mm from the reference edge of the board. */
  readonly near: Mm;
  readonly far: Mm;
}

/** A board, or several alike. Grain runs along the length. */
export interface CutBoard {
  readonly id: string;
  readonly length: Mm;
  readonly width: Mm;
  /** What opening it costs, in any one unit (money, litres, board feet); above 0. */
  readonly cost: number;
  readonly avoid: readonly AvoidZone[];
  /** How many alike there are; default 1. */
  readonly count?: number;
}

/** All parts and boards of one wood and one thickness. */
export interface CutProblem {
  readonly parts: readonly CutPart[];
  readonly boards: readonly CutBoard[];
  /** mm, what a saw cut takes. */
  readonly kerf: Mm;
  /** mm, the step of the rule: parts and kerf are rounded up to it, boards down. Default 1 mm. */
  readonly step?: Mm;
  /** Least offcut worth keeping; default 300 x 50 mm. */
  readonly keep?: { readonly length: Mm; readonly width: Mm };
  /** Only patterns whose first cuts are these; default: chosen for each board. */
  readonly first?: CutKind;
  /** Seed of the search's own random numbers; default 1. */
  readonly seed?: number;
}

/** mm (common practice, no source): long enough for a pad, a wedge or a loose tenon blank, wide enough to hold. */
export const KEPT_OFFCUT: { readonly length: Mm; readonly width: Mm } = { length: 300, width: 50 };

/** mm: a rule is read to this. */
export const RULE_STEP: Mm = 1;
