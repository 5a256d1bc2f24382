import type { CutKind } from './cut-plan.ts';

/** The parts of one size, in steps of the rule; kerf not included. */
export interface GridPart {
  readonly length: number;
  readonly width: number;
  readonly count: number;
  readonly area: number;
  /** Parts with the same number from 0 come from one board; -1 stands alone. */
  readonly group: number;
  /** Who they are: ids and their counts. */
  readonly members: readonly { readonly id: string; readonly count: number }[];
}

/** A rectangle to avoid, in steps: from x0 up to x1 along the board, y0 up to y1 across. */
export interface GridZone {
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
}

/** Boards alike in everything. */
export interface GridBoard {
  readonly length: number;
  readonly width: number;
  readonly area: number;
  /** Scaled: the mean board costs 100. */
  readonly cost: number;
  readonly zones: readonly GridZone[];
  readonly ids: readonly string[];
}

/** A problem in whole steps, in an order of its own, so that the order of its lists cannot matter. */
export interface Grid {
  readonly parts: readonly GridPart[];
  readonly boards: readonly GridBoard[];
  readonly kerf: number;
  readonly groups: number;
  /** First cuts of every board, when not to be chosen. */
  readonly first: CutKind | undefined;
  /** mm a step. */
  readonly step: number;
  /** Cost of the user for one unit of scaled cost. */
  readonly unit: number;
}
