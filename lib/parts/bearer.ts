import { type Outline, type OutlinePoint, roundCorner } from '../geometry/outline.ts';
import type { Part, PartKind } from '../model/part.ts';
import type { Mm } from '../units/mm.ts';
import { needPositive, type PieceOptions, partFrom } from './piece.ts';
import { edgeAlongX, type FitTo, isSquareCut, scribedEdge } from './scribed.ts';

export interface BearerOptions extends PieceOptions {
  readonly kind?: PartKind;
  readonly length: Mm;
  readonly thickness: Mm;
  /** The underside it carries; its top edge takes the V or the slope from it. */
  readonly fit: FitTo;
  /** mm, radius of the two lower corners; default none. */
  readonly endRound?: Mm;
}

/**
 * A piece that lies level under the top and carries it: bearer, cleat, upper rail.
 *
 *      ┐            ┌   upper edge: scribed to the underside
 *      │ ‾ ‾ _ _ ‾ ‾│
 *      └────────────┘   y = 0: reference edge, where the posts meet it
 *      x = 0
 *
 * Frame: x along the grain, y up from the straight lower edge, z from the outer face of the frame into the wood.
 * Handled: an underside that also slopes along the table; the upper edge is then cut on a bevel.
 *
 * @throws RangeError when the edge would fall below the reference edge, or a radius does not fit.
 */
export function bearer(options: BearerOptions): Part {
  const { id, length, thickness, fit, endRound = 0 } = options;
  needPositive(id, { length, thickness });
  const edge = scribedEdge(fit, 'x', 0, length, thickness);
  const least = Math.min(...edge.near.concat(edge.far).map((p) => p.height));
  if (least <= 0) throw new RangeError(`${id}: the underside comes down to ${least} mm over its lower edge`);
  const outline = (line: typeof edge.near): Outline => {
    const base: OutlinePoint[] = [
      { x: 0, y: 0, surface: 'reference-edge' },
      { x: length, y: 0, surface: 'far-end' },
      ...edgeAlongX(line),
    ];
    return endRound > 0 ? roundCorner(roundCorner(base, 1, endRound), 0, endRound) : base;
  };
  const finished = { length, width: Math.max(...edge.near.concat(edge.far).map((p) => p.height)), thickness };
  return partFrom(options, {
    kind: options.kind ?? 'bearer',
    name: 'bearer',
    finished,
    body: {
      kind: 'prism',
      thickness,
      outline: outline(edge.near),
      ...(isSquareCut(edge) ? {} : { far: outline(edge.far) }),
    },
    notes: ['upper edge scribed to the underside'],
  });
}
