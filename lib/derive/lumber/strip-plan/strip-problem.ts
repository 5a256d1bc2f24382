import type { Board } from '../../../model/records.ts';
import type { Mm } from '../../../units/mm.ts';

/** What a plan is judged by; each counts what is unwelcome, so less is better. */
export type StripTerm = 'reserve' | 'shownDefects' | 'undersideDefects' | 'rings' | 'tone' | 'volume' | 'symmetry';

/** A number a term: reserve missing below the cap in mm, defects in dm², ring pairs alike, tone 0–1, litres, cm. */
export type StripTerms = Readonly<Record<StripTerm, number>>;

/**
 * How the terms are set against each other: by weights (cost of one unit of each), or in order, where a term decides
 * unless two plans are within one `STEP` of it.
 */
export type StripPreference =
  | { readonly mode: 'weighted'; readonly weights: StripTerms }
  | { readonly mode: 'ordered'; readonly order: readonly StripTerm[] };

/** What the maker may settle about the arranging of boards. */
export interface StripSettings {
  /** Strips side by side. */
  readonly strips: number;
  /** Layers of a strip: one board, two boards glued face to face, or whichever serves. */
  readonly layers: 'one' | 'two' | 'either';
  /** mm, the saw cut that opens the glued blank on the center line; none when a seam lies there. */
  readonly kerf: Mm;
  /** mm off each edge that gets jointed. */
  readonly jointing: Mm;
  /** mm off each long edge of the glued blank. */
  readonly edgeTrim: Mm;
  /** mm of thickness to spare everywhere over the taper, half of it for the show face. Less is no plan. */
  readonly cleanUp: Mm;
  /** mm; no strip may end up narrower. */
  readonly leastWidth: Mm;
  /** mm that each half of a strip over the center line must have, before the cut that opens it there; 0: not looked at. */
  readonly leastHalf: Mm;
  /** A seam must fall on the center line. */
  readonly seamOnCenterLine: boolean;
  /** Ring direction of neighbors: alternate bark side up and down, or do not look at it. */
  readonly rings: 'alternate' | 'ignore';
  /** mm; a board this thick or thicker is scarce, and its volume counts `1 + scarcePremium` times. */
  readonly scarceFrom: Mm;
  readonly scarcePremium: number;
  /** mm; more reserve than this is worth nothing. */
  readonly reserveCap: Mm;
  readonly preference: StripPreference;
}

export type StripLayer = 'show' | 'bottom';

/** What the maker has decided by hand about one board: it is used, and as said here. */
export interface StripPin {
  readonly mark: string;
  /** Counted from the left edge, the first strip is 1. */
  readonly strip?: number;
  readonly layer?: StripLayer;
  /** The face that looks up as the top stands. */
  readonly faceUp?: 'A' | 'B';
  /** The far end of the board lies at the reference end of the top. */
  readonly turned?: boolean;
}

/** A top to be made of the boards at hand. Sizes in mm, finished; boards as measured, ready for jointing. */
export interface StripProblem {
  readonly width: Mm;
  readonly length: Mm;
  readonly centerThickness: Mm;
  readonly edgeThickness: Mm;
  readonly boards: readonly Board[];
  readonly settings: StripSettings;
  readonly pins?: readonly StripPin[];
}
