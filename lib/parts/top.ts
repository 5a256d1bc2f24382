import type { Surface } from '../geometry/surface.ts';
import type { EdgeProfile } from '../model/feature.ts';
import type { Part, PartId } from '../model/part.ts';
import type { Mm } from '../units/mm.ts';
import { needPositive, type PieceOptions } from './piece.ts';

export interface TopOptions extends PieceOptions {
  readonly length: Mm;
  readonly width: Mm;
  /** mm on the center line. */
  readonly thickness: Mm;
  /** mm at the long edges; the same as `thickness` for a flat top. */
  readonly edgeThickness: Mm;
  /** Measured or special underside: depth below the show face over x and y; default the wedge of the two thicknesses. */
  readonly underside?: Surface;
  readonly profiles?: readonly EdgeProfile[];
  /** The strips it is glued up from. */
  readonly members: readonly PartId[];
}

/**
 * The glued top: thick along the center line, thin at the long edges, flat on the show face.
 *
 * Frame: x along the grain from the reference end, y from the center line (negative is the left half when it stands), z
 * from the show face into the wood. Nothing that must survive the taper is measured from underside or long edge.
 */
export function top(options: TopOptions): Part {
  const { id, mark, wood, length, width, thickness, edgeThickness } = options;
  needPositive(id, { length, width, thickness, edgeThickness });
  const finished = { length, width, thickness };
  return {
    id,
    mark,
    name: options.name ?? 'top',
    kind: 'top',
    wood,
    finished,
    rough: finished,
    body: { kind: 'panel', length, width, underside: options.underside ?? wedge(width, thickness, edgeThickness) },
    features: options.profiles ?? [],
    members: options.members,
    notes: options.notes ?? [],
  };
}

/** Depth of a wedge-section underside below the show face: one plane for each half, or one for a flat top. */
export function wedge(width: Mm, thickness: Mm, edgeThickness: Mm): Surface {
  const slope = (thickness - edgeThickness) / (width / 2);
  if (slope === 0) return { take: 'lowest', planes: [{ name: 'flat', a: 0, b: 0, c: thickness }] };
  return {
    take: 'lowest',
    planes: [
      { name: 'left', a: 0, b: slope, c: thickness },
      { name: 'right', a: 0, b: -slope, c: thickness },
    ],
  };
}
