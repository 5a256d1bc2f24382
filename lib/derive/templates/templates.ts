import type { Drawing } from '../../drawing/drawing.ts';
import { type Assembly, placeOf, visibleParts } from '../../model/assembly.ts';
import type { Part } from '../../model/part.ts';
import type { Heading } from './heading.ts';
import { templateDrawing } from './template.ts';

export interface Template {
  readonly part: Part;
  readonly drawing: Drawing;
}

/** A template for every part of the piece that meets a sloping or flat underside, by id. */
export function templates(assembly: Assembly, heading: Heading): Template[] {
  return visibleParts(assembly).flatMap((part): Template[] => {
    const { body } = part;
    if (body.kind !== 'prism' || !body.outline.some((p) => p.surface?.startsWith('underside'))) return [];
    return [{ part, drawing: templateDrawing({ part, body, frame: placeOf(assembly, part.id) }, heading) }];
  });
}
