import { boundsOf } from '../../drawing/bounds.ts';
import type { Drawing, Entity } from '../../drawing/drawing.ts';
import { flatten } from '../../drawing/flatten.ts';
import { layTable } from '../../drawing/lay-table.ts';
import { LAYERS } from '../../drawing/layers.ts';
import { widthOf } from '../../drawing/table.ts';
import { textWidth } from '../../drawing/text-size.ts';
import { drawFace } from './draw-face.ts';
import type { Heading } from './heading.ts';
import { noteLines } from './note-lines.ts';
import { offsetTable } from './offset-table.ts';
import type { TemplateFace } from './template-face.ts';

/** From the notes to the table of offsets, mm; our convention. */
const GAP = 20;

/**
 * The full-size template of one part that meets the underside, or of several alike, as seen on the reference face: outline with
 * the V or slope taken from the underside, saw line, pockets, center line, reference edge, dimensions, notes and the table of
 * offsets. Model units are mm.
 */
export function templateDrawing(
  face: TemplateFace,
  heading: Heading,
  drawn: Drawing = faceDrawing(face, heading),
): Drawing {
  const { style, entities } = drawn;
  const lettered = noteLines(face, heading);
  const box = boundsOf(flatten(drawn), style.scale)!;
  const size = style.textHeight;
  const first = box.min[1] - 4 * size;
  const notes = lines(lettered, 0, first, size);
  const { title, table, foot } = offsetTable(face.outlines, heading.units, size);
  const notesWidth = Math.max(...lettered.map((line) => textWidth(line, size)));
  const beside = notesWidth + GAP + widthOf(table) <= box.max[0];
  const [x, y] = beside ? [notesWidth + GAP, first] : [size, first - 2 * size * (lettered.length + 1)];
  const laid = layTable(table, [x, y - size]);
  return {
    ...drawn,
    entities: [
      ...entities,
      ...notes,
      ...lines([title], x, y, size),
      ...laid.marks,
      ...lines(foot, x, y - size - laid.height - 2 * size, size),
    ],
  };
}

/** The same without notes and table. */
export function faceDrawing(face: TemplateFace, { units }: Heading): Drawing {
  const { style, entities } = drawFace(face, units);
  const [part] = face.parts;
  return { title: `${part.mark} ${part.name}`, style, entities };
}

/** Lines of text, one below the other. */
const lines = (texts: readonly string[], x: number, y: number, height: number): Entity[] =>
  texts.map((text, k) => ({ kind: 'text', layer: LAYERS.TEXT, text, at: [x, y - k * 2 * height], height }));
