import type { Vec2 } from '../../geometry/vec.ts';
import type { PartId } from '../../model/part.ts';

/** A straight line of a view; mm, in view coordinates: to the right and up on the paper. */
export interface ViewLine {
  readonly from: Vec2;
  readonly to: Vec2;
  readonly kind: 'visible' | 'hidden';
  /** The part it belongs to; where parts share a line, the one nearest to the viewer. */
  readonly part: PartId;
  /** The part ends here before empty space or before another part; otherwise an edge within the part. Hidden lines: false. */
  readonly outline: boolean;
}
