import type { Frame } from '../../geometry/frame.ts';
import type { PartId } from '../../model/part.ts';
import type { Solid } from '../solids/solid.ts';

/** The solid of a part, in the part's own frame, and where that frame lies in the table's frame. */
export interface PlacedSolid {
  readonly part: PartId;
  readonly solid: Solid;
  readonly frame: Frame;
}
