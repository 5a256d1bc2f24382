import type { Box } from './bounds.ts';
import type { Drawing, Entity } from './drawing.ts';
import type { Paper } from './paper.ts';
import type { LengthLook, Style } from './style.ts';

/** How the views of a set stand around the front view. */
export type ProjectionAngle = 'first' | 'third';

/** What all sheets of a set have in common. */
export interface SetHeading {
  readonly paper: Paper;
  readonly projection: ProjectionAngle;
  /** What lengths are lettered in: inches, millimetres, or both beside each other. */
  readonly lengths: LengthLook['system'];
  /** Whose drawing it is; empty when nobody has said. */
  readonly owner: string;
  /** What the piece is called. */
  readonly piece: string;
  /** Number of the drawing or the order; empty when there is none. */
  readonly number: string;
  readonly revision: string;
  /** YYYY-MM-DD. */
  readonly date: string;
  /** What the maker must not overlook, on every sheet; absent when all is well. */
  readonly warning?: string;
}

/** What is lettered in the title block of one sheet. */
export interface SheetHeading extends SetHeading {
  /** From 1. */
  readonly sheet: number;
  readonly of: number;
  /** Nothing on it is drawn to a scale. */
  readonly unscaled?: boolean;
}

/** Where the content of a sheet may go at one scale; model mm, the lower left corner of the paper is the origin. */
export interface SheetRoom {
  readonly heading: SheetHeading;
  /** Of the whole sheet: its scale, its lettering. */
  readonly style: Style;
  /** Inside the frame, above the title block. */
  readonly area: Box;
  /** Inside the frame, left of the title block: room for notes, a list, signatures. Narrow on the smallest papers. */
  readonly strip: Box;
}

/** A sheet that is not yet numbered and has no scale. */
export interface SheetPlan {
  /** Name of its files: lower case, digits, hyphens. */
  readonly name: string;
  readonly title: string;
  /** Scales to try, largest first; those of the paper when left out. */
  readonly scales?: readonly number[];
  /** A sheet of words and tables alone; the title block names no scale. */
  readonly unscaled?: boolean;
  /** How lengths look; to 1/32 in or 0.1 mm when left out. */
  readonly look?: (lengths: LengthLook['system']) => LengthLook;
  /** Everything on it but frame and title block, or undefined when it does not fit at this scale. */
  readonly draw: (room: SheetRoom) => readonly Entity[] | undefined;
}

/**
 * A finished sheet. Its drawing is in true mm of the model, so that every dimension measures the model; frame and title
 * block are drawn as large as the scale asks. `place(drawing, [0, 0])` puts it on paper, in paper mm.
 */
export interface Sheet {
  readonly name: string;
  readonly title: string;
  readonly paper: Paper;
  /** Model mm in one paper mm. */
  readonly scale: number;
  readonly drawing: Drawing;
}
