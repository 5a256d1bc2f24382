import { type Block, block } from '../../../drawing/block.ts';
import type { Dim } from '../../../drawing/dim.ts';
import type { Entity } from '../../../drawing/drawing.ts';
import type { Pt } from '../../../drawing/entity.ts';
import { LAYERS } from '../../../drawing/layers.ts';
import type { ProjectionAngle } from '../../../drawing/sheet.ts';
import { levelDim } from '../../../drawing/stack.ts';
import type { Style } from '../../../drawing/style.ts';
import type { PartId } from '../../../model/part.ts';
import type { Mm } from '../../../units/mm.ts';
import type { SeatMap } from '../../checks/seat-map.ts';
import type { Bounds } from '../../solids/solid.ts';
import { endView } from '../orthographic.ts';
import { viewEntities } from '../view-entities.ts';
import type { ViewLine } from '../view-line.ts';
import { cutFaceEntities } from './cut-faces.ts';
import { cuttingLine } from './cutting-line.ts';
import { overallDims } from './overall-dims.ts';
import type { PieceViews } from './piece-views.ts';
import { placeDims } from './place-dims.ts';
import { seatMarks } from './seat-marks.ts';
import { viewBlock } from './view-block.ts';

/** The views of an approval sheet; front, end and section stand on one line. */
export interface ApprovalViews {
  readonly plan: Block;
  readonly front: Block;
  readonly end: Block;
  readonly section: Block;
}

/** Of a top or a seat, mm. */
export interface Thickness {
  readonly part: PartId;
  readonly middle: Mm;
  readonly edge: Mm;
}

interface Shown {
  readonly views: PieceViews;
  readonly seats: SeatMap | undefined;
  readonly top: Thickness | undefined;
}

export function approvalViews({ views, seats, top }: Shown, angle: ProjectionAngle, style: Style): ApprovalViews {
  const sight = -endView(angle).toward[0] as 1 | -1;
  const front = viewBlock('Front', frontEntities(views, sight, style), style);
  const end = viewBlock(angle === 'third' ? 'Far end' : 'Reference end', endEntities(views, angle, style), style);
  const section = viewBlock('Section A-A', sectionEntities(views, angle, top, style), style);
  return { plan: planBlock(views, seats, style), front, end, section };
}

const linesOf = (lines: readonly ViewLine[]): Entity[] => viewEntities(lines);

/** Its name stands in the corner that chairs leave free, when there is one. */
function planBlock(views: PieceViews, seats: SeatMap | undefined, style: Style): Block {
  const entities = planEntities(views, seats, style);
  const { min } = views.box;
  const used = seats?.edges[1].places.map(({ middle, width }) => middle[0] - width / 2) ?? [];
  const free = Math.min(...used) - min[0];
  if (used.length === 0 || free < CORNER * style.scale) return viewBlock('Plan', entities, style);
  const at = [min[0], min[1] - 3 * style.scale] as const;
  const name: Entity = { kind: 'text', layer: LAYERS.TEXT, text: 'Plan', at, height: 3.5, valign: 'top', bold: true };
  return block([...entities, name], style);
}

/** Room for the name of the plan, paper mm; our convention. */
const CORNER: Mm = 16;

function planEntities({ plan }: PieceViews, seats: SeatMap | undefined, style: Style): Entity[] {
  const dims = seats ? placeDims(seats, style) : [];
  return [...linesOf(plan), ...(seats ? seatMarks(seats, style) : []), ...dims];
}

function frontEntities({ front, box, stand, cutAt }: PieceViews, sight: 1 | -1, style: Style): Entity[] {
  const extents = { whole: [box.min[0], box.max[0]], stand: [stand.min[0], stand.max[0]], foot: box.min[2] } as const;
  return [
    ...linesOf(front),
    floorLine(box.min[0], box.max[0], box.min[2], style),
    ...cuttingLine(cutAt, [box.min[2], box.max[2]], sight, [stand.min[0], stand.max[0]], style),
    ...overallDims(extents, 'below', style),
  ];
}

/** The floor, a little past both ends. */
const floorLine = (left: Mm, right: Mm, z: Mm, { scale }: Style): Entity => ({
  kind: 'poly',
  layer: LAYERS.TEXT,
  points: [
    [left - 3 * scale, z],
    [right + 3 * scale, z],
  ],
  closed: false,
});

function endEntities({ end, box, stand }: PieceViews, angle: ProjectionAngle, style: Style): Entity[] {
  const whole = acrossOf(box, angle);
  return [
    ...linesOf(end),
    floorLine(whole[0], whole[1], box.min[2], style),
    ...overallDims({ whole, stand: acrossOf(stand, angle), foot: box.min[2] }, 'below', style),
    ...overallDims({ whole: [box.min[2], box.max[2]], foot: whole[1] }, 'right', style),
  ];
}

/** From left to right of the end view, mm. */
const acrossOf = ({ min, max }: Bounds, angle: ProjectionAngle): readonly [Mm, Mm] =>
  endView(angle).right[1] > 0 ? [min[1], max[1]] : [-max[1], -min[1]];

/** What lies beyond the cut, the cut wood, and how thick the top is. */
function sectionEntities(
  { section, box }: PieceViews,
  angle: ProjectionAngle,
  top: Thickness | undefined,
  style: Style,
) {
  const [left, right] = acrossOf(box, angle);
  const drawn: Entity[] = [
    ...linesOf(section.lines),
    floorLine(left, right, box.min[2], style),
    ...cutFaceEntities(section.cuts, style),
  ];
  const border = section.cuts.find(({ part }) => part === top?.part)?.loops[0];
  return top && border ? [...drawn, ...thicknessDims(top, border, right, style)] : drawn;
}

/** At the edge, beyond all that is seen, and in the middle where that is another thickness. */
function thicknessDims({ middle, edge }: Thickness, border: readonly Pt[], beyond: Mm, style: Style): Dim[] {
  const [left, right] = [Math.min(...border.map((p) => p[0])), Math.max(...border.map((p) => p[0]))];
  const high = Math.max(...border.map((p) => p[1]));
  const upright = (x: Mm, thickness: Mm, at: Mm, text: 'before' | 'after'): Dim => ({
    ...levelDim([x, high - thickness], [x, high], 'right', at),
    placement: { text },
  });
  const center = (left + right) / 2;
  return [
    ...(Math.abs(middle - edge) < FLAT ? [] : [upright(center, middle, center, 'after')]),
    upright(right, edge, beyond + style.firstSpacing * style.scale, 'before'),
  ];
}

/** A difference that no rule shows, mm. */
const FLAT: Mm = 0.05;
