import type { Feature } from '../model/feature.ts';
import type { Part, PartKind } from '../model/part.ts';
import type { Mm } from '../units/mm.ts';
import { needPositive, type PieceOptions, partFrom } from './piece.ts';

export interface BoardOptions extends PieceOptions {
  readonly kind: PartKind;
  readonly length: Mm;
  readonly width: Mm;
  readonly thickness: Mm;
  readonly features?: readonly Feature[];
}

/**
 * A plain square-edged piece: rail, stretcher, seat, side, pad.
 *
 * Frame: x along the grain from the reference end, y from the reference edge, z from the reference face into the wood.
 */
export function board(options: BoardOptions): Part {
  const { id, kind, length, width, thickness } = options;
  needPositive(id, { length, width, thickness });
  const finished = { length, width, thickness };
  return partFrom(options, {
    kind,
    name: kind,
    finished,
    features: options.features ?? [],
    body: {
      kind: 'prism',
      thickness,
      outline: [
        { x: 0, y: 0, surface: 'reference-edge' },
        { x: length, y: 0, surface: 'far-end' },
        { x: length, y: width, surface: 'far-edge' },
        { x: 0, y: width, surface: 'reference-end' },
      ],
    },
  });
}

/** A rail across a frame; reference edge below. */
export const rail = (options: Omit<BoardOptions, 'kind'>): Part => board({ name: 'rail', ...options, kind: 'rail' });

/** A stretcher from frame to frame; reference edge below. */
export const stretcher = (options: Omit<BoardOptions, 'kind'>): Part =>
  board({ name: 'stretcher', ...options, kind: 'stretcher' });

/** A pad under a foot, post or panel leg; its thickness stands upright. */
export const pad = (options: Omit<BoardOptions, 'kind'>): Part => board({ name: 'pad', ...options, kind: 'pad' });
