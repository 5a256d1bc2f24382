import type { Mm } from '../../../units/mm.ts';
import type { StripTerms } from './strip-problem.ts';

/** How one board lies in its strip. */
export interface BoardPlace {
  readonly mark: string;
  /** The face that looks up as the top stands. */
  readonly faceUp: 'A' | 'B';
  /** The bark side looks up; of a board whose bark side is unknown, face A is taken for it. */
  readonly barkUp: boolean;
  /** The far end of the board lies at the reference end of the top. */
  readonly turned: boolean;
  /** mm from the end of the board that lies at the reference end of the top, to where the top begins. */
  readonly startsAt: Mm;
  /** mm off the side of the board away from the center line; off both sides alike where the strip lies over that line. */
  readonly ripOff: Mm;
  /** dm² of defects on the show face, within the strip; the terms count them as wide as the board is. */
  readonly shownDefects: number;
  /** dm² of defects on the finished underside. */
  readonly undersideDefects: number;
}

/** One strip, seen from above with the reference end at the bottom; from the left edge to the right. */
export interface StripPlace {
  /** mm across from the center line, left negative, in the glued blank. */
  readonly from: Mm;
  readonly to: Mm;
  /** mm to set the saw to: strip and the jointing of its two edges. */
  readonly ripWidth: Mm;
  /** mm of board thickness in the stack. */
  readonly thickness: Mm;
  /** mm over what the wedge and the clean-up want at the inner edge of the strip. */
  readonly reserve: Mm;
  readonly show: BoardPlace;
  readonly bottom?: BoardPlace;
}

export interface StripPlan {
  readonly strips: readonly StripPlace[];
  /** mm, the least of the strips. */
  readonly reserve: Mm;
  readonly terms: StripTerms;
  /** Cost by the preference asked for. */
  readonly value: number;
  /** Marks of the boards left over. */
  readonly unused: readonly string[];
}

/** How far a search has come. No plan is better than `bound`. */
export interface StripStatus {
  /** Nothing is left to look for. */
  readonly done: boolean;
  readonly plan?: StripPlan;
  readonly bound: number;
  /** Part of the bound by which the plan may still be beaten; 0 when it is the best possible. */
  readonly gap?: number;
  /** Units of work done. */
  readonly work: number;
}
