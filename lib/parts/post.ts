import type { Outline } from '../geometry/outline.ts';
import type { Part, PartKind } from '../model/part.ts';
import type { Mm } from '../units/mm.ts';
import { needPositive, type PieceOptions, partFrom } from './piece.ts';
import { edgeAlongY, type FitTo, isSquareCut, scribedEdge } from './scribed.ts';

export interface PostOptions extends PieceOptions {
  readonly kind?: PartKind;
  /** mm across the frame. */
  readonly width: Mm;
  /** mm along the table. */
  readonly thickness: Mm;
  /** mm between square shoulders, or the underside its upper end is scribed to. */
  readonly top: { readonly length: Mm } | FitTo;
}

/**
 * An upright piece, grain standing: post, panel leg, stave of a panel leg.
 *
 *        y = width   y = 0
 *           ┌───┐  x = length: square shoulder, or scribed to the underside
 *           │   │
 *           └───┘  x = 0: reference end, below
 *
 * Frame: x up the grain from the lower end, y across from the reference edge, z from the outer face into the wood.
 */
export function post(options: PostOptions): Part {
  const { id, width, thickness, top } = options;
  needPositive(id, { width, thickness });
  const edge = 'length' in top ? squareTop(top.length, width) : scribedEdge(top, 'y', 0, width, thickness);
  const heights = edge.near.concat(edge.far).map((p) => p.height);
  if (Math.min(...heights) <= 0)
    throw new RangeError(`${id}: there is no room for it; its length would be ${Math.min(...heights)} mm`);
  const outline = (line: typeof edge.near): Outline => [
    { x: 0, y: 0, surface: 'reference-edge' },
    ...edgeAlongY(line),
    { x: 0, y: width, surface: 'reference-end' },
  ];
  const finished = { length: Math.max(...heights), width, thickness };
  return partFrom(options, {
    kind: options.kind ?? 'post',
    name: 'post',
    finished,
    body: {
      kind: 'prism',
      thickness,
      outline: outline(edge.near),
      ...(isSquareCut(edge) ? {} : { far: outline(edge.far) }),
    },
    notes: 'length' in top ? [] : ['upper end scribed to the underside'],
  });
}

function squareTop(length: Mm, width: Mm): ReturnType<typeof scribedEdge> {
  const line = [
    { along: 0, height: length, plane: 'shoulder' },
    { along: width, height: length, plane: 'shoulder' },
  ];
  return { near: line, far: line };
}
