import type { Block } from '../../../../drawing/block.ts';
import type { Pt } from '../../../../drawing/entity.ts';
import type { StackSide } from '../../../../drawing/stack.ts';
import type { Style } from '../../../../drawing/style.ts';
import type { Vec3 } from '../../../../geometry/vec.ts';
import type { Part } from '../../../../model/part.ts';
import type { Mm } from '../../../../units/mm.ts';
import type { Bounds } from '../../../solids/solid.ts';
import { drawPartView, type SideDims } from './draw-part-view.ts';
import { faceMarks } from './face-marks.ts';
import { outlineCorners } from './outline-corners.ts';
import { datumOf } from './part-datum.ts';
import type { PartView, PartViews, Side } from './part-views.ts';
import type { LetteredPockets, SideWords } from './pocket-letters.ts';
import { isTapered } from './scribe-words.ts';
import { sliceThickness } from './slice-thickness.ts';
import { taperLook } from './taper-look.ts';
import { viewStops } from './view-stops.ts';

/** Every view of a part, drawn with its dimensions; by side. */
export type PartBlocks = ReadonlyMap<Side, Block>;

export function partBlocks(
  part: Part,
  shown: PartViews,
  kinds: readonly LetteredPockets[],
  words: SideWords,
  style: Style,
): PartBlocks {
  const datum = datumOf(part, shown.box);
  const look = isTapered(part) ? taperLook(style.lengths) : style.lengths;
  return new Map(
    shown.views.map((view) => {
      const sides = SIDES_OF[view.side](part, view, shown, kinds, datum, style);
      const marks = view.side === 'face' ? faceMarks(part, view, style) : [];
      return [view.side, drawPartView(capital(words[view.side]), view, sides, marks, look, style)];
    }),
  );
}

const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

type SidesOf = (
  part: Part,
  view: PartView,
  shown: PartViews,
  kinds: readonly LetteredPockets[],
  datum: Vec3,
  style: Style,
) => { readonly [S in StackSide]?: SideDims };

/** The shape by its corners, each dimensioned on the side it is nearest to; what is worked into the face by running rows. */
const faceSides: SidesOf = (part, view, { box }, kinds, datum, { lengths }) => {
  const corners = outlineCorners(part, box).map(([x, y]): Pt => view.toSheet([x, y, 0]));
  const [width, height] = view.size;
  const near = view.toSheet([box.min[0], box.min[1], 0]);
  const seen = { x: viewStops(view, 0, kinds, datum, lengths), y: viewStops(view, 1, kinds, datum, lengths) };
  const above = corners.filter(([, y]) => y >= height / 2);
  const below = corners.filter(([x, y]) => y < height / 2 && !above.some((p) => Math.abs(p[0] - x) < 1e-6));
  const right = corners.filter(([x]) => x >= width / 2);
  const left = corners.filter(([x, y]) => x < width / 2 && !right.some((p) => Math.abs(p[1] - y) < 1e-6));
  return {
    above: { stops: [], points: above, datum: [near[0], height] },
    below: { stops: seen.x, points: below, datum: [near[0], 0] },
    left: { stops: seen.y, points: left, datum: [0, near[1]] },
    right: { stops: [], points: right, datum: [width, near[1]] },
  };
};

/** Along the edge, on the side away from the face; thickness across it. */
const edgeSides: SidesOf = (_, view, { box }, kinds, datum, { lengths }) => {
  const [width, height] = view.size;
  const isAbove = view.upward.sign > 0;
  const near = view.toSheet([box.min[0], 0, box.min[2]]);
  const none: SideDims = { stops: [], points: [], datum: [0, 0] };
  const along: SideDims = { ...none, stops: viewStops(view, 0, kinds, datum, lengths) };
  return {
    [isAbove ? 'above' : 'below']: along,
    left: { ...none, stops: viewStops(view, 2, kinds, datum, lengths) },
    right: { stops: [], points: [[width, near[1] === 0 ? height : 0]], datum: [width, near[1]] },
  };
};

const endSides: SidesOf = (part, view, { box }, kinds, datum, { lengths }) => {
  const [width, height] = view.size;
  const near = view.toSheet([0, box.min[1], box.min[2]]);
  const isLeft = view.across.sign < 0;
  const none: SideDims = { stops: [], points: [], datum: [0, 0] };
  const thick = endThickness(part, view, box);
  return {
    [isLeft ? 'left' : 'right']: { ...none, stops: viewStops(view, 1, kinds, datum, lengths) },
    below: { stops: viewStops(view, 2, kinds, datum, lengths), points: thick.below, datum: [near[0], 0] },
    above: { stops: [], points: [...thick.above, [width - near[0], height]], datum: [near[0], height] },
  };
};

/** How thick a tapered part is at its upper and at its lower edge in an end view, sharp arrises. */
function endThickness(
  { body }: Part,
  view: PartView,
  { min, max }: Bounds,
): { readonly above: Pt[]; readonly below: Pt[] } {
  if (body.kind !== 'slice' && body.kind !== 'panel') return { above: [], below: [] };
  const slice = body.kind === 'slice' ? body : { of: body, profiles: [], from: min[1], to: max[1], top: 0 };
  const point = (y: Mm): Pt => view.toSheet([0, y, min[2] + sliceThickness(slice, y)]);
  const [low, high] = [point(min[1]), point(max[1])];
  return low[1] > high[1] ? { above: [low], below: [high] } : { above: [high], below: [low] };
}

const SIDES_OF: { readonly [S in Side]: SidesOf } = {
  face: faceSides,
  edge: edgeSides,
  farEdge: edgeSides,
  end: endSides,
  farEnd: endSides,
};
