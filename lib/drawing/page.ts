import type { Mm } from '../units/mm.ts';
import type { Mark } from './entity.ts';

/** One sheet of paper with everything on it. Origin at the lower left corner of the sheet, x to the right, y up, paper mm. */
export interface Page {
  /** As it stands in the list of pages: "A1", "Cutting list". */
  readonly name: string;
  readonly width: Mm;
  readonly height: Mm;
  /** Already at their size on paper: `place` makes such marks of a drawing. */
  readonly marks: readonly Mark[];
}
