import { type Box, bounds } from '../drawing/bounds.ts';
import type { Drawing } from '../drawing/drawing.ts';
import type { Mark, Text } from '../drawing/entity.ts';
import { flatten } from '../drawing/flatten.ts';
import type { Layer } from '../drawing/layer.ts';
import { layersOf } from '../drawing/layers-of.ts';
import { LINETYPES } from '../drawing/linetypes.ts';
import { along, polar } from '../drawing/vec.ts';
import { formatNumber } from '../units/format-length.ts';
import type { Mm } from '../units/mm.ts';
import { builtFractions } from './svg/fraction.ts';
import { arcPath, type Paper, polyPath } from './svg/path.ts';
import { escapeXml } from './svg/xml.ts';

export interface SvgOptions {
  /** Paper mm of white around the drawing. */
  readonly margin?: Mm;
  /** The part of the model to show, margin included; when left out, all of it and the margin. */
  readonly window?: Box;
  /** Decimals of a paper millimetre. */
  readonly decimals?: number;
  /** Fractions of an inch as they are, or with raised and lowered digits. */
  readonly fractions?: 'plain' | 'built';
}

export const SVG_DEFAULTS = { margin: 10, decimals: 3, fractions: 'plain' } as const satisfies SvgOptions;

/** Height of a capital to the font size: 0.73 measured in DejaVu Sans, 0.71 to 0.72 in other plain faces from memory. */
const CAPITAL = 0.72;

const ANCHOR = { left: 'start', center: 'middle', right: 'end' } as const;
const DROP = { baseline: 0, middle: -0.5, top: -1 } as const;

interface Pen extends Paper {
  readonly number: (value: number) => string;
  readonly letter: (text: string) => string;
  readonly scale: number;
}

function textMark(mark: Text, pen: Pen): string {
  const rotation = mark.rotation ?? 0;
  const height = mark.height * pen.scale;
  const base = along(mark.at, polar(rotation + 90), DROP[mark.valign ?? 'baseline'] * height);
  const turn = rotation === 0 ? '' : ` rotate(${pen.number(-rotation)})`;
  const anchor = ANCHOR[mark.align ?? 'left'];
  return (
    `<text transform="translate(${pen.point(base)})${turn}" font-size="${pen.length(height / CAPITAL)}" ` +
    `text-anchor="${anchor}"${mark.bold ? ' font-weight="bold"' : ''} fill="${mark.layer.ink.rgb}" stroke="none">${pen.letter(mark.text)}</text>`
  );
}

const DRAW: { readonly [K in Mark['kind']]: (mark: Extract<Mark, { kind: K }>, pen: Pen) => string } = {
  poly: (mark, pen) => `<path d="${polyPath(mark, pen)}"/>`,
  arc: (mark, pen) => `<path d="${arcPath(mark, pen)}"/>`,
  circle: (mark, pen) => {
    const [x, y] = pen.point(mark.center).split(' ');
    return `<circle cx="${x}" cy="${y}" r="${pen.length(mark.radius)}"/>`;
  },
  solid: (mark, pen) => {
    const corners = mark.corners.map((corner) => pen.point(corner));
    return `<polygon points="${corners.join(' ')}" fill="${mark.layer.ink.rgb}" stroke="none"/>`;
  },
  text: textMark,
};

function group(layer: Layer, marks: readonly Mark[], pen: Pen): string {
  const dash = LINETYPES[layer.linetype].dash.map((part) => pen.number(part * layer.width)).join(' ');
  const look =
    `fill="none" stroke="${layer.ink.rgb}" stroke-width="${pen.number(layer.width)}" stroke-linejoin="round"` +
    (dash ? ` stroke-dasharray="${dash}"` : '');
  const lines = marks.map((mark) => (DRAW[mark.kind] as (mark: Mark, pen: Pen) => string)(mark, pen));
  return `<g class="layer" data-layer="${escapeXml(layer.name)}" ${look}>\n${lines.join('\n')}\n</g>`;
}

/** Paper coordinates keep the origin of the model, so a place in the file can be found on the part: x right, y down. */
function makePen(scale: number, decimals: number, fractions: 'plain' | 'built'): Pen {
  const number = (value: number): string => formatNumber(value, decimals);
  return {
    scale,
    number,
    length: (mm) => number(mm / scale),
    point: ([x, y]) => `${number(x / scale)} ${number(-y / scale)}`,
    letter: (text) => escapeXml(fractions === 'built' ? builtFractions(text) : text),
  };
}

/**
 * A drawing as SVG at its scale, with real millimetres for width and height, one group a layer and lettering as text.
 *
 * @throws RangeError for a drawing with nothing in it.
 */
export function writeSvg(drawing: Drawing, options: SvgOptions = {}): string {
  const { margin, decimals, fractions, window } = { ...SVG_DEFAULTS, window: undefined, ...options };
  const { scale } = drawing.style;
  const box = window ?? bounds(drawing);
  if (!box) throw new RangeError(`the drawing ${JSON.stringify(drawing.title)} has nothing in it`);
  const edge = window ? 0 : margin;
  const pen = makePen(scale, decimals, fractions);
  const width = pen.number((box.max[0] - box.min[0]) / scale + 2 * edge);
  const height = pen.number((box.max[1] - box.min[1]) / scale + 2 * edge);
  const corner = `${pen.number(box.min[0] / scale - edge)} ${pen.number(-box.max[1] / scale - edge)}`;
  const marks = flatten(drawing);
  const groups = layersOf(marks).map((layer) =>
    group(
      layer,
      marks.filter((mark) => mark.layer.name === layer.name),
      pen,
    ),
  );
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="${corner} ${width} ${height}" ` +
      'font-family="sans-serif" xml:space="preserve" role="img">',
    `<title>${escapeXml(drawing.title)}</title>`,
    ...groups,
    '</svg>',
    '',
  ].join('\n');
}
