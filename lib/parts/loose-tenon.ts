import type { OutlinePoint } from '../geometry/outline.ts';
import type { Part } from '../model/part.ts';
import type { Mm } from '../units/mm.ts';
import { needPositive, type PieceOptions } from './piece.ts';

export interface LooseTenonOptions extends PieceOptions {
  /** mm along the grain, from tip to tip. */
  readonly length: Mm;
  /** mm, along the mortise. */
  readonly width: Mm;
  readonly thickness: Mm;
  /** Edges rounded to fit a mortise with round ends, or left square. */
  readonly edges: 'round' | 'square';
}

/**
 * A loose tenon, cut from a milled strip.
 *
 * Frame: x along the grain from one tip, y across its width, z through its thickness.
 */
export function looseTenon(options: LooseTenonOptions): Part {
  const { id, mark, wood, length, width, thickness, edges } = options;
  needPositive(id, { length, width, thickness });
  const finished = { length, width, thickness };
  return {
    id,
    mark,
    name: options.name ?? 'loose tenon',
    kind: 'looseTenon',
    wood,
    finished,
    // Milled in long strips and cut to length: nothing is added piece by piece.
    rough: finished,
    body: { kind: 'bar', length, profile: edges === 'round' ? rounded(width, thickness) : square(width, thickness) },
    features: [],
    notes: options.notes ?? [],
  };
}

function square(width: Mm, thickness: Mm): OutlinePoint[] {
  return [
    { x: 0, y: 0, surface: 'edge.near' },
    { x: width, y: 0, surface: 'far-face' },
    { x: width, y: thickness, surface: 'edge.far' },
    { x: 0, y: thickness, surface: 'reference-face' },
  ];
}

function rounded(width: Mm, thickness: Mm): OutlinePoint[] {
  const r = thickness / 2;
  if (width < thickness)
    throw new RangeError(`a tenon ${width} mm wide and ${thickness} mm thick cannot have round edges`);
  return [
    { x: r, y: 0, surface: 'reference-face' },
    { x: width - r, y: 0, bulge: 1, surface: 'edge.far' },
    { x: width - r, y: thickness, surface: 'far-face' },
    { x: r, y: thickness, bulge: 1, surface: 'edge.near' },
  ];
}
