import { type Box, boundsOf } from '../../drawing/bounds.ts';
import type { Entity } from '../../drawing/drawing.ts';
import type { Poly } from '../../drawing/entity.ts';
import { LAYERS } from '../../drawing/layers.ts';
import { DEFAULT_STYLE, type Style, sizes } from '../../drawing/style.ts';
import type { Outline } from '../../geometry/outline.ts';
import type { UnitSystem } from '../../units/format-length.ts';
import { putFaceMarks } from './face-marks.ts';
import { polyOf } from './face-poly.ts';
import { linearDims } from './linear-dims.ts';
import { greatestChange } from './measured-lines.ts';
import { isHidden, type PocketMark } from './pocket-marks.ts';
import { putRadiusDims } from './radius-dims.ts';
import { newSheet, type Sheet } from './sheet.ts';
import { putSlopeDims } from './slope-dims.ts';
import type { TemplateFace } from './template-face.ts';

/** Both systems beside each other, since taper is where they get mixed up. */
const LOOKS: { readonly [U in UnitSystem]: Style['lengths'] } = {
  in: { system: 'both', denominator: 64, rounding: 'nearest', decimals: 1 },
  mm: { system: 'mm', decimals: 1 },
};

/**
 * Larger than on a sheet of paper: it is read in the shop. The gap keeps the tails of brackets off the line below; 3.5
 * is of the series of ISO 3098-1, the gap our convention.
 */
const LETTERING = { textHeight: 3.5, textGap: 1.2, angleDecimals: 2 } as const;

const templateStyle = (units: UnitSystem): Style => ({ ...DEFAULT_STYLE, ...LETTERING, lengths: LOOKS[units] });

/**
 * The edge as designed is drawn where it is this far off somewhere, mm; nearer, it would only blur the finished line;
 * our convention.
 */
const APART = 1;

/**
 * The lines, dimensions and marks of a template, without the text below it.
 *
 * @param windows when given, lettering is put where one of them shows all of it.
 */
export function drawFace(face: TemplateFace, units: UnitSystem, windows?: readonly Box[]): Sheet {
  const { outlines, pockets, parts, kinds } = face;
  const { near } = outlines;
  const style = templateStyle(units);
  const sheet = newSheet(style, windows);
  sheet.put(...faceLines(face, units), ...linearDims(near, pockets, style));
  putSlopeDims(sheet, near);
  putRadiusDims(sheet, near);
  putFaceMarks(sheet, parts, near, kinds);
  return sheet;
}

/** The lines that a template is cut and worked to. */
function faceLines({ outlines, saw, pockets }: TemplateFace, units: UnitSystem): Entity[] {
  const { near, far, designed } = outlines;
  const apart = Math.abs(greatestChange(outlines, units) ?? 0) >= APART;
  return [
    polyOf('OUTLINE', near),
    polyOf('SAW-LINE', saw),
    ...(far ? [polyOf('HIDDEN', far)] : []),
    ...(designed && apart ? [polyOf('NEIGHBOR', designed)] : []),
    ...pockets.flatMap(markEntities),
    centerLine(near, templateStyle(units)),
  ];
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
