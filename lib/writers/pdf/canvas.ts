import type { Pt } from '../../drawing/entity.ts';
import type { Deg, Mm } from '../../units/mm.ts';

/** How a line is drawn; mm. */
export interface Stroke {
  readonly width: Mm;
  readonly rgb: string;
  /** Dash, gap, dash, gap ...; empty for an unbroken line. */
  readonly dash: readonly Mm[];
}

/** Where and how a line of lettering is put. */
export interface Lettering {
  /** The left end of the baseline. */
  readonly at: Pt;
  /** Height of a capital. */
  readonly height: Mm;
  /** Counter-clockwise. */
  readonly rotation: Deg;
  readonly bold: boolean;
  readonly rgb: string;
}

/** What a page is drawn on: paper mm from its lower left corner, y up. */
export interface Canvas {
  moveTo(to: Pt): void;
  lineTo(to: Pt): void;
  /** A cubic Bézier curve over two control points. */
  curveTo(first: Pt, second: Pt, to: Pt): void;
  close(): void;
  /** Draws the path gathered so far as a line. */
  stroke(look: Stroke): void;
  /** Fills the path gathered so far. */
  fill(rgb: string): void;
  /** Length of a line of lettering, mm. */
  width(text: string, height: Mm, bold: boolean): Mm;
  letter(text: string, how: Lettering): void;
}
