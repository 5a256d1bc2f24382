import { boundsOf } from '../../drawing/bounds.ts';
import type { Drawing, Entity } from '../../drawing/drawing.ts';
import type { Poly } from '../../drawing/entity.ts';
import { flatten } from '../../drawing/flatten.ts';
import { LAYERS } from '../../drawing/layers.ts';
import { DEFAULT_STYLE, type Style, sizes } from '../../drawing/style.ts';
import type { Frame } from '../../geometry/frame.ts';
import type { Outline } from '../../geometry/outline.ts';
import type { PrismBody } from '../../model/body.ts';
import { isPocket } from '../../model/feature.ts';
import type { Part } from '../../model/part.ts';
import type { UnitSystem } from '../../units/format-length.ts';
import { putFaceMarks } from './face-marks.ts';
import { polyOf } from './face-poly.ts';
import { type FaceOutlines, type FaceView, faceView } from './face-view.ts';
import type { Heading } from './heading.ts';
import { linearDims } from './linear-dims.ts';
import { noteLines } from './note-lines.ts';
import { outsideOf } from './outline.ts';
import { pocketKinds } from './pocket-kinds.ts';
import { isHidden, type PocketMark, pocketMark } from './pocket-marks.ts';
import { putRadiusDims } from './radius-dims.ts';
import { newSheet } from './sheet.ts';
import { putSlopeDims } from './slope-dims.ts';

/** A part whose face is drawn: a prism that stands in the table. */
export interface TemplatePart {
  readonly part: Part;
  readonly body: PrismBody;
  readonly frame: Frame;
}

/** Distance of the saw line outside the finished line, mm: 1/8 in, by which makers saw outside a line they will rout to. */
export const SAW_MARGIN = 3.175;

/** Both systems beside each other, since taper is where they get mixed up. */
const LOOKS: { readonly [U in UnitSystem]: Style['lengths'] } = {
  in: { system: 'both', denominator: 64, rounding: 'nearest', decimals: 1 },
  mm: { system: 'mm', decimals: 1 },
};

/** Larger than on a sheet of paper: it is read in the shop. The gap keeps the tails of brackets off the line below. */
const LETTERING = { textHeight: 3.5, textGap: 1.2, angleDecimals: 2 } as const;

/**
 * The full-size template of one part that meets the underside, as seen on its reference face: outline with the V or slope
 * taken from the underside, saw line, pockets, center line, reference edge, dimensions and notes. Model units are mm.
 */
export function templateDrawing({ part, body, frame }: TemplatePart, heading: Heading): Drawing {
  const view = faceView(frame, body.outline);
  const style: Style = { ...DEFAULT_STYLE, ...LETTERING, lengths: LOOKS[heading.units] };
  const near = view.outline(body.outline);
  const outlines: FaceOutlines = { near, ...(body.far ? { far: view.outline(body.far) } : {}) };
  const marks = part.features.filter(isPocket).map((f) => markOnSheet(pocketMark(f, body.outline), view));
  const kinds = pocketKinds(marks, heading.units);
  const sheet = newSheet(style);
  sheet.put(
    polyOf('OUTLINE', near),
    polyOf('SAW-LINE', outsideOf(near, SAW_MARGIN)),
    ...(outlines.far ? [polyOf('HIDDEN', outlines.far)] : []),
    ...marks.flatMap(markEntities),
    centerLine(near, style),
    ...linearDims(near, marks, style),
  );
  putSlopeDims(sheet, near);
  putRadiusDims(sheet, near);
  putFaceMarks(sheet, part, near, kinds);
  const drawn: Drawing = { title: `${part.mark} ${part.name}`, style, entities: sheet.entities };
  const lines = noteLines(part, body.thickness, outlines, kinds, heading);
  return { ...drawn, entities: [...drawn.entities, ...notes(drawn, lines)] };
}

function markOnSheet(mark: PocketMark, view: FaceView): PocketMark {
  const { axis } = mark;
  return {
    pocket: mark.pocket,
    outline: view.outline(mark.outline),
    center: view.toSheet(...mark.center),
    ...(axis ? { axis: [view.toSheet(...axis[0]), view.toSheet(...axis[1])] as const } : {}),
  };
}

const POCKET_LAYERS = { mortise: 'MORTISE', bore: 'BORE', slottedHole: 'SLOT' } as const;

function markEntities({ pocket, outline, axis }: PocketMark): Entity[] {
  const shape = polyOf(isHidden(pocket) ? 'HIDDEN' : POCKET_LAYERS[pocket.kind], outline);
  return axis ? [shape, { kind: 'poly', layer: LAYERS.CENTER, points: axis, closed: false }] : [shape];
}

function centerLine(outline: Outline, style: Style): Poly {
  const past = sizes(style).text;
  const { min, max } = boundsOf([polyOf('OUTLINE', outline)], style.scale)!;
  const x = (min[0] + max[0]) / 2;
  return {
    kind: 'poly',
    layer: LAYERS.CENTER,
    points: [
      [x, min[1] - past],
      [x, max[1] + past],
    ],
    closed: false,
  };
}

/** Lines of text below everything that is drawn. */
function notes(drawing: Drawing, lines: readonly string[]): Entity[] {
  const { text } = sizes(drawing.style);
  const low = boundsOf(flatten(drawing), drawing.style.scale)?.min[1] ?? 0;
  return lines.map((line, k) => ({
    kind: 'text',
    layer: LAYERS.TEXT,
    text: line,
    at: [0, low - (k + 2) * 2 * text],
    height: drawing.style.textHeight,
  }));
}
