import type { Frame } from '../../geometry/frame.ts';
import { type Assembly, placeOf, visibleParts } from '../../model/assembly.ts';
import type { PrismBody } from '../../model/body.ts';
import type { Part } from '../../model/part.ts';

/** A part whose face is drawn: a prism that stands in the piece and meets its underside. */
export interface TemplatePart {
  readonly part: Part;
  readonly body: PrismBody;
  readonly frame: Frame;
}

/** Every part of a piece that meets a sloping or flat underside, by id. */
export function templateParts(assembly: Assembly): TemplatePart[] {
  return visibleParts(assembly).flatMap((part): TemplatePart[] => {
    const { body } = part;
    if (body.kind !== 'prism' || !body.outline.some((p) => p.surface?.startsWith('underside'))) return [];
    return [{ part, body, frame: placeOf(assembly, part.id) }];
  });
}
