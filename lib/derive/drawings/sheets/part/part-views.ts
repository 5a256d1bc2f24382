import type { Box } from '../../../../drawing/bounds.ts';
import type { Frame } from '../../../../geometry/frame.ts';
import { turnIn } from '../../../../geometry/frame.ts';
import { cross, type Vec2, type Vec3 } from '../../../../geometry/vec.ts';
import { isPocket, type Pocket } from '../../../../model/feature.ts';
import type { Part } from '../../../../model/part.ts';
import type { Mm } from '../../../../units/mm.ts';
import { type Bounds, boundsOf, type Solid } from '../../../solids/solid.ts';
import { hiddenLines } from '../../hidden-lines.ts';
import { toView, type View } from '../../view.ts';
import type { ViewLine } from '../../view-line.ts';

/** The sides of a part, by its own axes: the first of each pair is the reference, at the low end of its axis. */
export const SIDES = {
  face: [0, 0, -1],
  edge: [0, -1, 0],
  farEdge: [0, 1, 0],
  end: [-1, 0, 0],
  farEnd: [1, 0, 0],
} as const satisfies Record<string, Vec3>;

export type Side = keyof typeof SIDES;

/** A part seen square on one of its sides; mm, the lower left corner of the part is the origin. */
export interface PartView {
  readonly side: Side;
  readonly lines: readonly ViewLine[];
  readonly toSheet: (p: Vec3) => Vec2;
  /** Width and height of the view. */
  readonly size: Vec2;
  /** Which axes of the part run to the right and up; -1 when the axis runs the other way. */
  readonly across: { readonly axis: 0 | 1 | 2; readonly sign: 1 | -1 };
  readonly upward: { readonly axis: 0 | 1 | 2; readonly sign: 1 | -1 };
}

/** All views of a part that its sheet shows. */
export interface PartViews {
  readonly box: Bounds;
  /** The reference face: reference end to the left and reference edge above, or, for 'flipped', to the right and below. */
  readonly flipped: boolean;
  readonly views: readonly PartView[];
}

const OWN: Frame = { origin: [0, 0, 0], x: [1, 0, 0], y: [0, 1, 0] };

/** The part alone, lying along the sheet; upright as in the piece where its width stands upright there. */
export function partViews(part: Part, solid: Solid, frame: Frame): PartViews {
  const box = boundsOf(solid.vertices);
  const flipped = turnIn(frame, [0, 0, 1])[1] > 0.5;
  const sides = sidesShown(part);
  return { box, flipped, views: sides.map((side) => partView(part, solid, side, flipped)) };
}

/** What a length, a thickness, a gap and the names take beside bare views at the least, paper mm; our convention. */
const DIMS = { across: 19, up: 33 } as const;

/** Whether the bare views and the least of their dimensions are smaller than a room: what is not need not be drawn. */
export function viewsFit({ views }: PartViews, { min, max }: Box, scale: number): boolean {
  const sum = (sides: readonly Side[], k: 0 | 1): Mm =>
    views.filter(({ side }) => sides.includes(side)).reduce((total, { size }) => total + size[k], 0);
  return (
    sum(['face', 'end', 'farEnd'], 0) + DIMS.across * scale <= max[0] - min[0] &&
    sum(['face', 'edge', 'farEdge'], 1) + DIMS.up * scale <= max[1] - min[1]
  );
}

/** Three directions, and every other side that something is worked into. */
function sidesShown({ features }: Part): Side[] {
  const into = features.filter(isPocket).map(sideOf);
  const worked = (side: Side): boolean => into.includes(side);
  const edges = (['edge', 'farEdge'] as const).filter(worked);
  const ends = (['end', 'farEnd'] as const).filter(worked);
  return [
    'face',
    ...(edges.length > 0 ? edges : (['edge'] as const)),
    ...(ends.length > 0 ? ends : (['end'] as const)),
  ];
}

/** The side that a pocket is worked into; a far face counts as the face, behind which it is drawn. */
export function sideOf({ into }: Pocket): Side {
  const [x, y] = into;
  if (Math.abs(x) > 0.5) return x > 0 ? 'end' : 'farEnd';
  if (Math.abs(y) > 0.5) return y > 0 ? 'edge' : 'farEdge';
  return 'face';
}

function partView(part: Part, solid: Solid, side: Side, flipped: boolean): PartView {
  const view = viewOf(side, flipped);
  const points = solid.vertices.map((p) => toView(view, p));
  const low = [0, 1].map((k) => Math.min(...points.map((p) => p[k]!))) as [Mm, Mm];
  const high = [0, 1].map((k) => Math.max(...points.map((p) => p[k]!))) as [Mm, Mm];
  const shift = ([x, y]: Vec2): Vec2 => [x - low[0], y - low[1]];
  const lines = hiddenLines([{ part: part.id, solid, frame: OWN }], view).map((line) => ({
    ...line,
    from: shift(line.from),
    to: shift(line.to),
  }));
  return {
    side,
    lines,
    toSheet: (p) => {
      const [x, y] = toView(view, p);
      return shift([x, y]);
    },
    size: [high[0] - low[0], high[1] - low[1]],
    across: axisOf(view.right),
    upward: axisOf(view.up),
  };
}

/** Views around the face keep its edge or its end in line with it. */
function viewOf(side: Side, flipped: boolean): View {
  const toward: Vec3 = SIDES[side];
  const s = flipped ? -1 : 1;
  const isEnd = side === 'end' || side === 'farEnd';
  if (isEnd) {
    const up: Vec3 = [0, -s, 0];
    return { toward, up, right: cross(up, toward) };
  }
  const right: Vec3 = [s, 0, 0];
  return { toward, right, up: cross(toward, right) };
}

function axisOf(d: Vec3): PartView['across'] {
  const axis = d.findIndex((v) => Math.abs(v) > 0.5) as 0 | 1 | 2;
  return { axis, sign: d[axis]! > 0 ? 1 : -1 };
}
