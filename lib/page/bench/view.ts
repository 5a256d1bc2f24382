import type { Issue } from '../../params/issue.ts';
import type { UnitSystem } from '../../units/format-length.ts';
import type { Edits } from './edits.ts';
import type { Found } from './found.ts';
import type { Piece } from './piece.ts';

/** All that the page shows at one moment. */
export interface View {
  readonly units: UnitSystem;
  readonly edits: Edits;
  /** What is wrong with the values; the piece is then an earlier one. */
  readonly issues: readonly Issue[];
  /** Why values that were read well cannot be put together. */
  readonly failure: string | undefined;
  /** The last piece that could be made. */
  readonly piece: Piece | undefined;
  readonly found: Found;
  /** What changes are measured against. */
  readonly mark: Mark | undefined;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
}

/** A piece that was noted to compare with. */
export interface Mark {
  /** Whether it is the design as its file has it. */
  readonly isDesign: boolean;
  readonly piece: Piece;
  /** Once all of it is known. */
  readonly found: Found | undefined;
}

/** A piece of the page that follows the view. */
export interface Panel {
  readonly element: HTMLElement;
  update(view: View): void;
}

/** What a maker can do at the bench. */
export interface Hands {
  /** Gives a parameter a text; further steps of one movement (a drag, a typing) are undone together. */
  set(path: string, text: string, movement?: string): void;
  /** The same, unless something would be wrong with it: for text that is not yet typed to its end. */
  setIfGood(path: string, text: string, movement: string): void;
  /** Puts the value of the design back. */
  putBack(path: string): void;
  putAllBack(): void;
  undo(): void;
  redo(): void;
  setUnits(units: UnitSystem): void;
  /** Measures changes against the values as they are, or against the design again. */
  markHere(): void;
  markDesign(): void;
}
