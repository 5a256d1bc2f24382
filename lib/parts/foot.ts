import type { OutlinePoint } from '../geometry/outline.ts';
import type { Part } from '../model/part.ts';
import type { Mm } from '../units/mm.ts';
import { needPositive, type PieceOptions, partFrom } from './piece.ts';

export interface FootOptions extends PieceOptions {
  readonly length: Mm;
  /** mm, upright, pads not counted. */
  readonly depth: Mm;
  readonly thickness: Mm;
  /** Hollow below, so that it stands on its ends; default none. */
  readonly arch?: { readonly rise: Mm; readonly fromEnds: Mm };
}

/**
 * The foot of a frame.
 *
 *      y = 0 ┌──────────────────┐  reference edge, where the posts stand
 *            └──╲____________╱──┘  hollow between the pads
 *
 * Frame: x along the grain, y down from the upper edge, z from the outer face of the frame into the wood.
 *
 * @throws RangeError when the arch does not fit between the ends or is deeper than the foot.
 */
export function foot(options: FootOptions): Part {
  const { id, length, depth, thickness, arch } = options;
  needPositive(id, { length, depth, thickness });
  const finished = { length, width: depth, thickness };
  const hollow: OutlinePoint[] = [];
  if (arch && arch.rise > 0) {
    const chord = length - 2 * arch.fromEnds;
    if (!(chord > 0) || arch.rise >= depth || arch.rise > chord / 2) {
      throw new RangeError(
        `${id}: an arch ${arch.rise} mm high and ${chord} mm long does not fit a foot ${depth} mm deep`,
      );
    }
    hollow.push({ x: length - arch.fromEnds, y: depth, bulge: (-2 * arch.rise) / chord, surface: 'arch' });
    hollow.push({ x: arch.fromEnds, y: depth, surface: 'far-edge' });
  }
  return partFrom(options, {
    kind: 'foot',
    name: 'foot',
    finished,
    body: {
      kind: 'prism',
      thickness,
      outline: [
        { x: 0, y: 0, surface: 'reference-edge' },
        { x: length, y: 0, surface: 'far-end' },
        { x: length, y: depth, surface: 'far-edge' },
        ...hollow,
        { x: 0, y: depth, surface: 'reference-end' },
      ],
    },
  });
}
