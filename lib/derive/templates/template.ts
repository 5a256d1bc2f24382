import { baseline } from '../../drawing/baseline.ts';
import { bounds } from '../../drawing/bounds.ts';
import type { Dim } from '../../drawing/dim.ts';
import type { Drawing, Entity } from '../../drawing/drawing.ts';
import type { Pt } from '../../drawing/entity.ts';
import type { Layer } from '../../drawing/layer.ts';
import { LAYERS } from '../../drawing/layers.ts';
import { DEFAULT_STYLE, type Style } from '../../drawing/style.ts';
import type { Frame } from '../../geometry/frame.ts';
import { arcOfBulge, type Outline, type OutlinePoint } from '../../geometry/outline.ts';
import type { Vec2 } from '../../geometry/vec.ts';
import type { PrismBody } from '../../model/body.ts';
import { isPocket } from '../../model/feature.ts';
import type { Part } from '../../model/part.ts';
import type { UnitSystem } from '../../units/format-length.ts';
import { type FaceView, faceView } from './face-view.ts';
import { outsideOf } from './outline.ts';
import { isFromFar, type PocketMark, pocketMark } from './pocket-marks.ts';
import { scribedCorners } from './scribed-stretches.ts';
import { slopeDims } from './slope-dims.ts';
import { templateNotes } from './template-notes.ts';

/** What is lettered on every template. */
export interface Heading {
  readonly title: string;
  readonly revision: string;
  readonly date: string;
  readonly units: UnitSystem;
}

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

/**
 * The full-size template of one part that meets the underside, as seen on its reference face: outline with the V or slope
 * taken from the underside, saw line, pockets, center line, reference edge, dimensions and notes. Model units are mm.
 */
export function templateDrawing({ part, body, frame }: TemplatePart, heading: Heading): Drawing {
  const view = faceView(frame, body.outline);
  const style: Style = { ...DEFAULT_STYLE, textHeight: 3.5, angleDecimals: 2, lengths: LOOKS[heading.units] };
  const outline = view.outline(body.outline);
  const marks = part.features.filter(isPocket).map((f) => markOnSheet(pocketMark(f, body.outline), view));
  const entities: Entity[] = [
    poly(LAYERS.OUTLINE, outline),
    poly(LAYERS['SAW-LINE'], outsideOf(outline, SAW_MARGIN)),
    ...(body.far ? [poly(LAYERS.HIDDEN, view.outline(body.far))] : []),
    ...marks.flatMap(markEntities),
    ...dimensions(outline, marks, style),
    ...slopeDims(outline, style),
  ];
  const drawn: Drawing = { title: `${part.mark} ${part.name}`, style, entities };
  const low = bounds(drawn)?.min[1] ?? 0;
  return { ...drawn, entities: [...entities, ...templateNotes({ part, body, outline, marks, low, style }, heading)] };
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

const POCKET_LAYERS = { mortise: LAYERS.MORTISE, bore: LAYERS.BORE, slottedHole: LAYERS.SLOT } as const;

function markEntities({ pocket, outline, axis }: PocketMark): Entity[] {
  const entities: Entity[] = [poly(isFromFar(pocket) ? LAYERS.HIDDEN : POCKET_LAYERS[pocket.kind], outline)];
  if (axis) entities.push({ kind: 'poly', layer: LAYERS.CENTER, points: axis, closed: false });
  return entities;
}

const poly = (layer: Layer, outline: readonly OutlinePoint[]): Entity => ({
  kind: 'poly',
  layer,
  points: outline.map((p) => (p.bulge ? [p.x, p.y, p.bulge] : [p.x, p.y])),
  closed: true,
});

/** Running dimensions from the lower left corner: pockets and width below, heights of the scribed edge at the sides. */
function dimensions(outline: Outline, marks: readonly PocketMark[], style: Style): Dim[] {
  const right = Math.max(...outline.map((p) => p.x));
  const datum: Pt = [0, 0];
  const fromBelow = marks.filter((m) => !m.axis || isUpright(m.axis));
  const mortises = fromBelow.filter((m) => m.pocket.kind === 'mortise').flatMap((m) => span(m.outline, 'x'));
  const holes = fromBelow.filter((m) => m.pocket.kind !== 'mortise').map((m): Pt => [m.center[0], 0]);
  const below = baseline([...mortises, [right, 0]], datum, 'below', style, { edge: 0 });
  const drilled = holes.length > 0 ? baseline(holes, datum, 'below', style, { edge: 0, level: below.levels }).dims : [];
  const fromSide = marks.filter((m) => !m.axis || !isUpright(m.axis));
  const heights = scribedCorners(outline);
  const atRight = heights.filter((p) => p[0] > right - ON_SIDE);
  const atLeft = [...fromSide.flatMap(heightsOf), ...heights.filter((p) => p[0] <= right - ON_SIDE)];
  return [
    ...below.dims,
    ...drilled,
    ...baseline(atLeft, datum, 'left', style, { edge: 0 }).dims,
    ...baseline(atRight, [right, 0], 'right', style, { edge: right }).dims,
    ...radii(outline),
  ];
}

/** A mortise by its two ends, a hole by its middle. */
const heightsOf = ({ pocket, outline, center }: PocketMark): Pt[] =>
  pocket.kind === 'mortise' ? span(outline, 'y') : [[0, center[1]]];

/** Closer to the side of the part than this counts as on it, mm. */
const ON_SIDE = 1e-6;

/** One dimension for each radius of the outline, where it first comes. */
function radii(outline: Outline): Dim[] {
  const seen = new Set<string>();
  return outline.flatMap((a, i): Dim[] => {
    if (!a.bulge) return [];
    const { cx, cy, radius, start, span: turn } = arcOfBulge(a, outline[(i + 1) % outline.length]!);
    const key = radius.toFixed(6);
    if (seen.has(key)) return [];
    seen.add(key);
    const on = start + turn / 2;
    return [
      {
        kind: 'dim',
        type: 'radius',
        layer: LAYERS.DIMENSION,
        center: [cx, cy],
        on: [cx + radius * Math.cos(on), cy + radius * Math.sin(on)],
        placement: 'inside',
      },
    ];
  });
}

const isUpright = ([a, b]: readonly [Vec2, Vec2]): boolean => Math.abs(a[0] - b[0]) < 1e-6;

/** The two ends of an outline along one axis of the sheet. */
function span(outline: readonly OutlinePoint[], axis: 'x' | 'y'): Pt[] {
  const values = outline.map((p) => p[axis]);
  const [low, high] = [Math.min(...values), Math.max(...values)];
  return axis === 'x'
    ? [
        [low, 0],
        [high, 0],
      ]
    : [
        [0, low],
        [0, high],
      ];
}
