import type { Drawing } from '../../drawing/drawing.ts';
import type { Assembly } from '../../model/assembly.ts';
import type { Part } from '../../model/part.ts';
import { alikeFaces } from './alike-faces.ts';
import type { Heading } from './heading.ts';
import { faceDrawing, templateDrawing } from './template.ts';
import { type TemplateFace, templateFace } from './template-face.ts';
import { templateParts } from './template-part.ts';

/** A full-size template for one part, or for several that are alike. */
export interface Template {
  /** The first of its parts, which gives it its name. */
  readonly part: Part;
  readonly face: TemplateFace;
  /** The face with its dimensions and marks. */
  readonly drawn: Drawing;
  /** The same with notes and the table of offsets below it. */
  readonly drawing: Drawing;
}

/**
 * A template for every part of the piece that meets a sloping or flat underside, by id; parts that are alike share one.
 *
 * @param designed the piece before its underside was measured; the same as the piece when nothing was.
 */
export function templates(assembly: Assembly, heading: Heading, designed: Assembly = assembly): Template[] {
  const before = new Map(designed === assembly ? [] : templateParts(designed).map((one) => [one.part.id, one]));
  const faces = templateParts(assembly).map((one) => templateFace(one, heading.units, before.get(one.part.id)));
  return alikeFaces(faces).map((face) => {
    const drawn = faceDrawing(face, heading);
    return { part: face.parts[0], face, drawn, drawing: templateDrawing(face, heading, drawn) };
  });
}
