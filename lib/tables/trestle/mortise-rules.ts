import type { Rule } from '../../params/rule.ts';
import type { Mm } from '../../units/mm.ts';
import { atLeast, atMost } from './rule-kinds.ts';
import {
  BETWEEN_CUTS,
  hasLowerRail,
  hasStretchers,
  isKind,
  meetsPosts,
  meetsRail,
  UNDER,
  under,
  WALL,
} from './rule-values.ts';
import type { TrestleFields, TrestleValues } from './values.ts';

/** What the stretchers stand between, mm along the table. */
function meetsThickness(v: TrestleValues): Mm {
  if (isKind(v, 'panel')) return v.panelLeg.thickness;
  return v.stretcher.to === 'posts' ? v.post.thickness : v.lowerRail.thickness;
}

/** What `postIsCrossed` reads. */
const POST = [
  'frame.kind',
  'frameJoint.tenonDepth',
  'frameJoint.tenonThickness',
  'frameJoint.postTenonWidth',
  'post.width',
  'post.thickness',
  'lowerRail.use',
  'stretcher.count',
  'stretcher.to',
] as const;

/** True when a rail or stretcher would run into the mortises in the ends of a post, were it at their height. */
function postIsCrossed(v: TrestleValues): boolean {
  if (!isKind(v, 'bearer')) return false;
  const { tenonDepth, tenonThickness, postTenonWidth } = v.frameJoint;
  const deepest = tenonDepth + BETWEEN_CUTS;
  return (
    (hasLowerRail(v) && deepest > (v.post.width - postTenonWidth) / 2) ||
    (meetsPosts(v) && deepest > (v.post.thickness - tenonThickness) / 2)
  );
}

/** Half the height of a rail mortise in a post and, beyond it, the mortise in the end of the post, mm. */
const endToRail = ({ frameJoint: f }: TrestleValues): Mm =>
  f.tenonDepth + BETWEEN_CUTS + f.railTenonWidth / 2 + f.endPlay;

/** What `railIsCrossed` reads. */
const RAIL = [
  'frame.kind',
  'frameJoint.tenonDepth',
  'frameJoint.tenonThickness',
  'lowerRail.thickness',
  'stretcher.count',
  'stretcher.to',
] as const;

/** True when a stretcher would run into the mortises in the ends of the lower rail, were it that near to them. */
const railIsCrossed = (v: TrestleValues): boolean =>
  meetsRail(v) && v.frameJoint.tenonDepth + BETWEEN_CUTS > (v.lowerRail.thickness - v.frameJoint.tenonThickness) / 2;

/** Length of lower rail that its end mortises and one mortise in its face take up, mm. */
const railTaken = ({ frameJoint: f }: TrestleValues): Mm => 2 * (f.tenonDepth + BETWEEN_CUTS) + f.tenonThickness;

/** Mortises that come from two sides of a piece do not meet inside it. */
export const MORTISE_RULES: readonly Rule<TrestleFields>[] = [
  atMost({
    fields: [
      'frame.inset',
      'frame.kind',
      'top.length',
      'stretcher.count',
      'stretcher.to',
      'post.thickness',
      'lowerRail.thickness',
      'panelLeg.thickness',
      'frameJoint.tenonDepth',
    ],
    limit: (v) =>
      hasStretchers(v) ? (v.top.length - meetsThickness(v) - 2 * v.frameJoint.tenonDepth - WALL) / 2 : undefined,
    because: 'a stretcher needs room for the mortises in its two ends and 5 mm of wood between them',
  }),
  atMost({
    fields: [
      'frameJoint.tenonDepth',
      'frame.kind',
      'lowerRail.use',
      'stretcher.count',
      'stretcher.to',
      'post.width',
      'post.thickness',
      'frameJoint.tenonThickness',
    ],
    limit: (v) =>
      hasLowerRail(v) && meetsPosts(v)
        ? (Math.max(v.post.width, v.post.thickness) - v.frameJoint.tenonThickness) / 2 - BETWEEN_CUTS
        : undefined,
    because: 'the mortises of lower rail and stretcher would meet inside the post',
  }),
  atLeast({
    fields: ['stretcher.height', 'foot.height', 'frameJoint.railTenonWidth', 'frameJoint.endPlay', ...POST],
    limit: (v) => (postIsCrossed(v) ? v.foot.height + endToRail(v) : undefined),
    because: 'the mortise of a rail or stretcher would meet the one in the lower end of the post',
  }),
  atMost({
    fields: [
      'stretcher.height',
      'bearer.length',
      'bearer.depth',
      'frameJoint.railTenonWidth',
      'frameJoint.endPlay',
      ...UNDER,
      ...POST,
    ],
    limit: (v) => (postIsCrossed(v) ? under(v, v.bearer.length / 2) - v.bearer.depth - endToRail(v) : undefined),
    because: 'the mortise of a rail or stretcher would meet the one in the upper end of the post',
  }),
  atLeast({
    fields: ['post.spacing', 'post.width', ...RAIL],
    limit: (v) => (railIsCrossed(v) && v.stretcher.count === 1 ? v.post.width + railTaken(v) : undefined),
    because: 'the mortise of the stretcher would meet those in the ends of the lower rail',
  }),
  atMost({
    fields: ['stretcher.spacing', 'post.spacing', 'post.width', ...RAIL],
    limit: (v) =>
      railIsCrossed(v) && v.stretcher.count === 2 ? v.post.spacing - v.post.width - railTaken(v) : undefined,
    because: 'the mortises of the stretchers would meet those in the ends of the lower rail',
  }),
  atMost({
    fields: [
      'stretcher.height',
      'frame.kind',
      'stretcher.count',
      'stretcher.to',
      'upperRail.depth',
      'post.spacing',
      'post.width',
      'post.thickness',
      'frameJoint.tenonDepth',
      'frameJoint.tenonThickness',
      'frameJoint.railTenonWidth',
      'frameJoint.endPlay',
      ...UNDER,
    ],
    limit(v) {
      const { tenonDepth, tenonThickness, railTenonWidth, endPlay } = v.frameJoint;
      const apart = tenonDepth + BETWEEN_CUTS <= (Math.max(v.post.width, v.post.thickness) - tenonThickness) / 2;
      if (!isKind(v, 'posts') || !meetsPosts(v) || apart) return undefined;
      const middle = under(v, (v.post.spacing - v.post.width) / 2) - v.upperRail.depth / 2;
      return middle - railTenonWidth - 2 * endPlay - BETWEEN_CUTS;
    },
    because: 'the mortises of stretcher and upper rail would meet inside the post',
  }),
];
