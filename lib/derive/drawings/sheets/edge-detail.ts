import type { Block } from '../../../drawing/block.ts';
import type { Entity } from '../../../drawing/drawing.ts';
import type { Pt } from '../../../drawing/entity.ts';
import { hatch } from '../../../drawing/hatch.ts';
import { LAYERS } from '../../../drawing/layers.ts';
import type { Style } from '../../../drawing/style.ts';
import type { Mm } from '../../../units/mm.ts';
import { viewBlock } from './view-block.ts';

/** How much of the top is shown inwards from its edge, paper mm; our convention. */
const SHOWN: Mm = 50;

const NAMES: { readonly [scale: number]: string } = { 1: 'Edge, full size', 2: 'Edge, half size' };

/**
 * The edge of a top at a scale of its own, from the border of its section. It goes onto the sheet as marks, without
 * dimensions: those would measure it at the scale of the sheet.
 */
export function edgeDetail(border: readonly Pt[], scale: number, style: Style): Block {
  const far = Math.max(...border.map(([x]) => x));
  const high = Math.max(...border.map(([, y]) => y));
  const factor = style.scale / scale;
  const cut = far - SHOWN * scale;
  const [from, to] = crossingsOf(border, cut);
  const place = ([x, y]: Pt): Pt => [(x - far) * factor, (y - high) * factor];
  const outline = [from.at, ...from.rest, to].map(place);
  return viewBlock(NAMES[scale] ?? `Edge, 1:${scale}`, detailMarks(outline, style), style);
}

function detailMarks(outline: readonly Pt[], style: Style): Entity[] {
  return [
    ...hatch([outline], style),
    { kind: 'poly', layer: LAYERS.SECTION, points: outline, closed: false },
    { kind: 'poly', layer: LAYERS.TEXT, points: breakLine(outline.at(-1)!, outline[0]!, style.scale), closed: false },
  ];
}

/** A border that is cut upright at `x`: where it comes in, the points on the right, and where it leaves. */
function crossingsOf(border: readonly Pt[], x: Mm): readonly [{ readonly at: Pt; readonly rest: readonly Pt[] }, Pt] {
  const n = border.length;
  const start = border.findIndex(([bx], k) => bx < x && border[(k + 1) % n]![0] >= x);
  if (start < 0) throw new RangeError(`a section of a top does not reach ${x} mm`);
  const rest: Pt[] = [];
  let k = (start + 1) % n;
  for (; border[k]![0] >= x; k = (k + 1) % n) rest.push(border[k]!);
  return [{ at: onLine(border[start]!, rest[0]!, x), rest }, onLine(rest.at(-1)!, border[k]!, x)];
}

function onLine(a: Pt, b: Pt, x: Mm): Pt {
  const t = (x - a[0]) / (b[0] - a[0]);
  return [x, a[1] + (b[1] - a[1]) * t];
}

/** A line with a zigzag: the wood goes on; paper mm. */
function breakLine(a: Pt, b: Pt, scale: number): Pt[] {
  const middle = (a[1] + b[1]) / 2;
  const up = Math.sign(b[1] - a[1]);
  const at = (dx: Mm, dy: Mm): Pt => [a[0] + dx * scale, middle + up * dy * scale];
  return [a, at(0, -2.5), at(-2, -1), at(2, 1), at(0, 2.5), b];
}

/** The largest detail that fits into a room; undefined when none does. */
export function fittingDetail(
  border: readonly Pt[],
  style: Style,
  fits: (detail: Block) => boolean,
): Block | undefined {
  const width = Math.max(...border.map(([x]) => x)) - Math.min(...border.map(([x]) => x));
  return [1, 2, 4]
    .filter((scale) => scale < style.scale && SHOWN * scale < width / 2)
    .map((scale) => edgeDetail(border, scale, style))
    .find(fits);
}
