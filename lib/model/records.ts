import type { Mm } from '../units/mm.ts';

/**
 * One reading of the top after the taper. Frame of the top: `along` from the reference end, `across` from the center line
 * (negative is the left half when it stands), depth of the underside below the show face.
 */
export interface Station {
  /** Line of the file, from 1. */
  readonly row: number;
  readonly along: Mm;
  readonly across: Mm;
  readonly thickness: Mm;
  /** Which half it was read on, where that was said: on the center line the place does not tell. */
  readonly side?: 'left' | 'right';
}

/** The underside of the top as it was measured. */
export interface MeasuredUnderside {
  /** YYYY-MM-DD. */
  readonly date: string;
  readonly stations: readonly Station[];
}

/** A place on a board that must not show, or must not end up in a part. */
export interface Defect {
  readonly what: string;
  /** mm from the reference end of the board. */
  readonly from: Mm;
  readonly to: Mm;
  /** mm from the reference edge of the board. */
  readonly near: Mm;
  readonly far: Mm;
  /** The face it lies on; `through` when it goes through. */
  readonly face: 'A' | 'B' | 'through';
  /** mm from that face into the wood; the whole thickness when it goes through. */
  readonly depth: Mm;
}

/**
 * A board as measured after milling. Frame: length from the reference end, width from the reference edge; face A is the
 * marked one.
 */
export interface Board {
  /** Line of the file, from 1. */
  readonly row: number;
  /** Number pencilled on the wood. */
  readonly mark: string;
  /** mm, the least of what was measured. */
  readonly thickness: Mm;
  /** mm, what it was before it came out thinner than that. */
  readonly milledFrom?: Mm;
  /** mm at the corners, as far as they were measured: reference end near and far edge, far end near and far edge. */
  readonly corners?: readonly [Mm, Mm, Mm, Mm];
  readonly width: Mm;
  readonly length: Mm;
  /** Percent. */
  readonly moisture?: number;
  /** The face that looked to the bark. */
  readonly bark?: 'A' | 'B';
  /** 0 the lightest of the pile, 1 the darkest. */
  readonly tone?: number;
  readonly defects: readonly Defect[];
  /** In the money of the shop, for the whole board. */
  readonly price?: number;
}

/** What was measured in the shop, as far as it was. */
export interface Records {
  readonly underside?: MeasuredUnderside;
  readonly boards?: readonly Board[];
}
