import { spanOf } from '../../drawing/bounds.ts';
import { sides, sweep } from '../../drawing/bulge.ts';
import type { Mark, Poly, Pt, Text } from '../../drawing/entity.ts';
import type { Layer } from '../../drawing/layer.ts';
import { LINETYPES } from '../../drawing/linetypes.ts';
import { along, polar } from '../../drawing/vec.ts';
import { arcCurves } from './arc-curves.ts';
import type { Canvas, Stroke } from './canvas.ts';

function strokeOf({ width, ink, linetype }: Layer): Stroke {
  return { width, rgb: ink.rgb, dash: LINETYPES[linetype].dash.map((part) => part * width) };
}

function followArc(canvas: Canvas, center: Pt, radius: number, start: number, span: number): void {
  for (const { first, second, to } of arcCurves(center, radius, start, span)) canvas.curveTo(first, second, to);
}

/** @throws RangeError for a polyline of fewer than two points. */
function drawPoly(poly: Poly, canvas: Canvas): void {
  const [first] = poly.points;
  if (!first || poly.points.length < 2) {
    throw new RangeError(`a polyline on ${poly.layer.name} has ${poly.points.length} points; it needs two`);
  }
  canvas.moveTo([first[0], first[1]]);
  for (const side of sides(poly)) {
    if (side.bulge === 0) canvas.lineTo(side.to);
    else {
      const { center, radius, start, span } = sweep(side);
      followArc(canvas, center, radius, start, span);
    }
  }
  if (poly.closed) canvas.close();
  canvas.stroke(strokeOf(poly.layer));
}

const SHIFT = { left: 0, center: -0.5, right: -1 } as const;
const DROP = { baseline: 0, middle: -0.5, top: -1 } as const;

function drawText(mark: Text, canvas: Canvas): void {
  const { text, height, rotation = 0, align = 'left', valign = 'baseline', bold = false, layer } = mark;
  const shift = SHIFT[align] === 0 ? 0 : SHIFT[align] * canvas.width(text, height, bold);
  const start = along(mark.at, polar(rotation), shift);
  const at = along(start, polar(rotation + 90), DROP[valign] * height);
  canvas.letter(text, { at, height, rotation, bold, rgb: layer.ink.rgb });
}

const DRAW: { readonly [K in Mark['kind']]: (mark: Extract<Mark, { kind: K }>, canvas: Canvas) => void } = {
  poly: drawPoly,
  arc: (arc, canvas) => {
    canvas.moveTo(along(arc.center, polar(arc.start), arc.radius));
    followArc(canvas, arc.center, arc.radius, arc.start, spanOf(arc));
    canvas.stroke(strokeOf(arc.layer));
  },
  circle: ({ center, radius, layer }, canvas) => {
    canvas.moveTo(along(center, polar(0), radius));
    followArc(canvas, center, radius, 0, 360);
    canvas.close();
    canvas.stroke(strokeOf(layer));
  },
  solid: ({ corners: [first, ...others], layer }, canvas) => {
    canvas.moveTo(first);
    for (const corner of others) canvas.lineTo(corner);
    canvas.close();
    canvas.fill(layer.ink.rgb);
  },
  text: drawText,
};

/** Draws marks in paper mm, in their order. */
export function drawMarks(marks: readonly Mark[], canvas: Canvas): void {
  for (const mark of marks) (DRAW[mark.kind] as (mark: Mark, canvas: Canvas) => void)(mark, canvas);
}
