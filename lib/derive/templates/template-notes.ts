import type { Entity } from '../../drawing/drawing.ts';
import type { Pt } from '../../drawing/entity.ts';
import { LAYERS } from '../../drawing/layers.ts';
import { type Style, sizes } from '../../drawing/style.ts';
import type { Outline } from '../../geometry/outline.ts';
import type { PrismBody } from '../../model/body.ts';
import type { Pocket } from '../../model/feature.ts';
import type { Part } from '../../model/part.ts';
import { formatInches, formatMm, formatNumber, type UnitSystem } from '../../units/format-length.ts';
import { degrees, type Mm } from '../../units/mm.ts';
import { isFromFar, type PocketMark } from './pocket-marks.ts';
import { scribedStretches } from './scribed-stretches.ts';
import type { Heading } from './template.ts';

interface NoteContext {
  readonly part: Part;
  readonly body: PrismBody;
  /** On the sheet. */
  readonly outline: Outline;
  readonly marks: readonly PocketMark[];
  /** y below which nothing is drawn yet. */
  readonly low: number;
  readonly style: Style;
}

/** Mark, reference edge, grain, center line, letters at the pockets and the lines of text below. */
export function templateNotes(context: NoteContext, heading: Heading): Entity[] {
  const { part, body, outline, marks, low, style } = context;
  const { text: height } = sizes(style);
  const width = Math.max(...outline.map((p) => p.x));
  const tall = Math.max(...outline.map((p) => p.y));
  const kinds = pocketKinds(marks, heading.units);
  const lines = [
    `${heading.title}, revision ${heading.revision}, ${heading.date}`,
    `${part.mark}  ${part.name}  ${part.id}`,
    `finished line, seen on the reference face; thickness ${lengthText(body.thickness, heading.units)}; wood: ${part.wood}`,
    ...slopeLines(outline, heading.units),
    ...(body.far ? [bevelLine(body)] : []),
    ...kinds.map(({ letter, words, count }) => `${letter}: ${count > 1 ? `${count} x ` : ''}${words}`),
    'saw outside the dash-dot line, then trim to the finished line',
  ];
  return [
    ...referenceEdge(outline, marks, style),
    centerLine(width, tall, style),
    grainArrow(part, marks, width, tall, style),
    { kind: 'text', layer: LAYERS.TEXT, text: part.mark, at: [width / 2 + 3 * height, tall * 0.42], height: 10 },
    ...kinds.flatMap(({ letter, at }) => at.map((center) => letterAt(letter, center))),
    ...lines.map(
      (text, k): Entity => ({
        kind: 'text',
        layer: LAYERS.TEXT,
        text,
        at: [0, low - (k + 2) * 2 * height],
        height: 3.5,
      }),
    ),
  ];
}

const letterAt = (text: string, at: Pt): Entity => ({
  kind: 'text',
  layer: LAYERS.TEXT,
  text,
  at: [at[0] + 1.5, at[1]],
  height: 3.5,
  valign: 'middle',
});

/** A thick arrow shape on the straight edge from which everything is measured. */
function referenceEdge(outline: Outline, marks: readonly PocketMark[], style: Style): Entity[] {
  const { text } = sizes(style);
  const low = Math.min(...outline.map((p) => p.y));
  const edge = outline.filter((p) => p.y < low + 1e-6).map((p) => p.x);
  const at = clearPlace(marks, Math.min(...edge), Math.max(...edge), 13 * text) + text;
  const v: Pt[] = [
    [at - text, low + 2 * text],
    [at, low],
    [at + text, low + 2 * text],
  ];
  return [
    { kind: 'poly', layer: LAYERS.REFERENCE, points: v, closed: false },
    { kind: 'text', layer: LAYERS.REFERENCE, text: 'reference', at: [at + 2 * text, low + text / 2], height: 3.5 },
  ];
}

/** The first stretch along the sheet that no pocket covers; the start when there is none. */
function clearPlace(marks: readonly PocketMark[], from: number, to: number, need: number): number {
  const spans = marks
    .map(({ outline }) => outline.map((p) => p.x))
    .map((xs): [number, number] => [Math.min(...xs), Math.max(...xs)])
    .sort((a, b) => a[0] - b[0]);
  let at = from;
  for (const [start, end] of spans) {
    if (start - at >= need) return at;
    at = Math.max(at, end);
  }
  return to - at >= need ? at : from;
}

const centerLine = (width: Mm, tall: Mm, style: Style): Entity => ({
  kind: 'poly',
  layer: LAYERS.CENTER,
  points: [
    [width / 2, -2 * sizes(style).text],
    [width / 2, tall + 2 * sizes(style).text],
  ],
  closed: false,
});

/** A double arrow along the grain, in a quiet corner of the face. */
function grainArrow(part: Part, marks: readonly PocketMark[], width: Mm, tall: Mm, style: Style): Entity {
  const { text } = sizes(style);
  const upright = Math.abs(part.finished.length - tall) < 1e-6;
  const reach = Math.min(60, (upright ? tall : width) / 5);
  const need = (upright ? 2 * text : reach) + 2 * text;
  const [x, y] = [clearPlace(marks, 0, width, need) + need / 2, tall * 0.42];
  const [dx, dy] = upright ? [0, 1] : [1, 0];
  const point = (along: number, aside: number): Pt => [x + dx * along - dy * aside, y + dy * along + dx * aside];
  const points = [
    point(-reach / 2 + text, text / 2),
    point(-reach / 2, 0),
    point(reach / 2, 0),
    point(reach / 2 - text, text / 2),
  ];
  return { kind: 'poly', layer: LAYERS.REFERENCE, points, closed: false };
}

interface PocketKindNote {
  readonly letter: string;
  readonly words: string;
  readonly count: number;
  readonly at: readonly Pt[];
}

/** Pockets that are worked alike share a letter. */
function pocketKinds(marks: readonly PocketMark[], units: UnitSystem): PocketKindNote[] {
  const kinds = new Map<string, Pt[]>();
  for (const mark of marks) {
    const side = isFromFar(mark.pocket) ? ', from the far face' : '';
    const words = WORDS[mark.pocket.kind](mark.pocket as never, units) + side;
    kinds.set(words, [...(kinds.get(words) ?? []), mark.center]);
  }
  return [...kinds].map(([words, at], k) => ({ letter: String.fromCharCode(97 + k), words, count: at.length, at }));
}

const WORDS: { readonly [K in Pocket['kind']]: (pocket: Extract<Pocket, { kind: K }>, units: UnitSystem) => string } = {
  mortise: (p, u) => `mortise ${size(p.width, p.length, u)}, ${depthText(p.depth, u)}`,
  bore: (p, u) => `${p.purpose} hole ${lengthText(p.diameter, u)} across, ${depthText(p.depth, u)}`,
  slottedHole: (p, u) => `${p.purpose} slot ${size(p.width, p.length, u)}, ${depthText(p.depth, u)}`,
};

const size = (width: Mm, length: Mm, units: UnitSystem): string =>
  `${lengthText(width, units)} x ${lengthText(length, units)}`;

const depthText = (depth: Mm | 'through', units: UnitSystem): string =>
  depth === 'through' ? 'right through' : `${lengthText(depth, units)} deep`;

/** Both systems for an inch shop, millimetres alone otherwise. ASCII only. */
const lengthText = (mm: Mm, units: UnitSystem): string =>
  units === 'in' ? `${formatInches(mm, { mark: '"' })} (${formatMm(mm, 1, 'nearest', '')})` : formatMm(mm);

/** Each slope once, as degrees and as rise in ten. */
function slopeLines(outline: Outline, units: UnitSystem): string[] {
  const slopes = scribedStretches(outline).map(({ a, b }) => Math.abs((b.y - a.y) / (b.x - a.x)));
  const different = slopes.filter((s, i) => slopes.findIndex((t) => Math.abs(s - t) < 1e-6) === i);
  return different.map((s) => {
    const ten =
      units === 'in' ? `${formatInches(s * 254, { mark: '"' })} in 10"` : `${formatNumber(s * 100, 2)} in 100`;
    return `slope ${formatNumber(degrees(Math.atan(s)), 2)} deg, ${ten}`;
  });
}

/** The tilt to set on the saw when the underside slopes along the table as well. */
function bevelLine({ outline, far, thickness }: PrismBody): string {
  const shifts = outline.map((p, i) => Math.hypot(far![i]!.x - p.x, far![i]!.y - p.y));
  const tilt = degrees(Math.atan(Math.max(...shifts) / thickness));
  return `bevel the scribed edge by ${formatNumber(tilt, 2)} deg; the dashed line is the far face`;
}
