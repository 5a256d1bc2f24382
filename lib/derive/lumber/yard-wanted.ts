import type { Mm } from '../../units/mm.ts';
import type { YardPile } from './yard-pile.ts';

/** Pieces of one size to be cut. */
export interface PieceNeed {
  readonly pieces: number;
  readonly width: Mm;
  readonly length: Mm;
}

/** Strips side by side, each as wide as its board comes. */
export interface StripCover {
  /** mm that they cover together once they are jointed. */
  readonly width: Mm;
  /** mm, rough. */
  readonly length: Mm;
  /** mm of width that each strip loses until it is jointed. */
  readonly lost: Mm;
}

/** What is to come out of the boards of one class. */
export interface ClassWanted {
  readonly pile: YardPile;
  readonly cover?: StripCover;
  readonly parts: readonly PieceNeed[];
}

/** How boards are cut up. */
export interface YardSaw {
  readonly kerf: Mm;
  /** mm: strips are no wider than this and no narrower than that. */
  readonly widest: Mm;
  readonly narrowest: Mm;
}
