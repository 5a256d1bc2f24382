import type { Rule } from '../../params/rule.ts';
import type { Mm } from '../../units/mm.ts';
import { atLeast, atMost } from './rule-kinds.ts';
import { isKind, SLOPE, slope, UNDER, under, WALL } from './rule-values.ts';
import type { TrestleFields, TrestleValues } from './values.ts';

/** Least length of a post that can still be joined at both ends: 60 mm, or as its mortises need (our convention). */
const shortPost = (v: TrestleValues): Mm => Math.max(60, 2 * v.frameJoint.tenonDepth + WALL);

/** What a frame takes up along the table, mm. */
const frameThickness = (v: TrestleValues): number => {
  if (isKind(v, 'panel')) return v.panelLeg.thickness + 2 * v.cleat.thickness;
  const carrying = isKind(v, 'bearer') ? Math.max(v.bearer.thickness, v.foot.thickness) : v.upperRail.thickness;
  return Math.max(v.post.thickness, carrying, v.lowerRail.use ? v.lowerRail.thickness : 0);
};

const FRAME_FIELDS = [
  'frame.kind',
  'panelLeg.thickness',
  'cleat.thickness',
  'bearer.thickness',
  'foot.thickness',
  'upperRail.thickness',
  'post.thickness',
  'lowerRail.use',
  'lowerRail.thickness',
] as const;

export const BASE_RULES: readonly Rule<TrestleFields>[] = [
  atMost({
    fields: ['frame.inset', 'top.length', ...FRAME_FIELDS],
    limit: (v) => (v.top.length - frameThickness(v)) / 2 - 10,
    because: 'the two frames would cross in the middle of the top',
  }),
  atLeast({
    fields: ['frame.inset', ...FRAME_FIELDS],
    limit: (v) => frameThickness(v) / 2,
    because: 'the frame would stand out beyond the end of the top',
  }),
  atMost({
    fields: ['bearer.length', 'frame.kind', 'top.width', 'top.undersideEdgeSize'],
    limit: (v) => (isKind(v, 'bearer') ? v.top.width - 2 * v.top.undersideEdgeSize : undefined),
    because: 'the bearer must stay under the top',
  }),
  atMost({
    fields: ['post.spacing', 'frame.kind', 'post.width', 'bearer.length', 'bearer.endRound', 'foot.length'],
    limit: (v) =>
      isKind(v, 'bearer') ? Math.min(v.bearer.length - 2 * v.bearer.endRound, v.foot.length) - v.post.width : undefined,
    because: 'the posts must stand within the straight part of the bearer and within the foot',
  }),
  atMost({
    fields: ['post.spacing', 'frame.kind', 'post.width', 'top.width', 'top.undersideEdgeSize'],
    limit: (v) => (isKind(v, 'posts') ? v.top.width - 2 * v.top.undersideEdgeSize - v.post.width : undefined),
    because: 'the posts must stand under the top',
  }),
  atLeast({
    fields: ['post.spacing', 'frame.kind', 'post.width', 'frameJoint.tenonDepth', 'fixing.fromEnds'],
    limit: (v) =>
      isKind(v, 'panel')
        ? undefined
        : v.post.width + 2 * Math.max(v.frameJoint.tenonDepth + WALL, isKind(v, 'posts') ? v.fixing.fromEnds + 20 : 0),
    because: 'rails between the posts need room for their joints and screws',
  }),
  atMost({
    fields: ['bearer.endRound', 'frame.kind', 'bearer.depth', 'bearer.length'],
    limit: (v) => (isKind(v, 'bearer') ? Math.min(v.bearer.depth - 1, v.bearer.length / 4) : undefined),
    because: 'the corner must end below the upper edge',
  }),
  atMost({
    fields: ['bearer.depth', 'frame.kind', 'bearer.length', 'foot.height', 'frameJoint.tenonDepth', ...UNDER],
    limit: (v) => (isKind(v, 'bearer') ? under(v, v.bearer.length / 2) - v.foot.height - shortPost(v) : undefined),
    because: 'between foot and bearer there must be at least 60 mm of post, and room for the mortises in its ends',
  }),
  atLeast({
    fields: ['bearer.depth', 'frame.kind', 'bearer.length', 'frameJoint.tenonDepth', ...SLOPE, 'bearer.reliefDepth'],
    limit: (v) =>
      isKind(v, 'bearer')
        ? slope(v) * (v.bearer.length / 2) + v.bearer.reliefDepth + v.frameJoint.tenonDepth + WALL
        : undefined,
    because: 'the tenon of a post and 5 mm of wood over it must fit under the V',
  }),
  atMost({
    fields: ['foot.height', 'frame.kind', 'bearer.depth', 'bearer.length', 'frameJoint.tenonDepth', ...UNDER],
    limit: (v) => (isKind(v, 'bearer') ? under(v, v.bearer.length / 2) - v.bearer.depth - shortPost(v) : undefined),
    because: 'between foot and bearer there must be at least 60 mm of post, and room for the mortises in its ends',
  }),
  atLeast({
    fields: ['foot.height', 'frame.kind', 'pad.thickness', 'frameJoint.tenonDepth', 'foot.archRise'],
    limit: (v) =>
      isKind(v, 'bearer') ? v.pad.thickness + v.frameJoint.tenonDepth + WALL + v.foot.archRise : undefined,
    because: 'pad, hollow, the tenon of a post and 5 mm of wood below it must fit into the height of the foot',
  }),
  atLeast({
    fields: ['foot.length', 'frame.kind', 'pad.fromEnds', 'pad.length', 'foot.archRise'],
    limit: (v) =>
      isKind(v, 'bearer') ? 4 * v.pad.fromEnds + 2 * v.pad.length + Math.max(20, 2 * v.foot.archRise + 1) : undefined,
    because: 'two pads and the hollow between them must fit under it',
  }),
  atMost({
    fields: [
      'upperRail.depth',
      'frame.kind',
      'post.spacing',
      'post.width',
      'stretcher.height',
      'lowerRail.depth',
      ...UNDER,
    ],
    limit: (v) =>
      isKind(v, 'posts')
        ? under(v, (v.post.spacing - v.post.width) / 2) - v.stretcher.height - v.lowerRail.depth / 2 - 20
        : undefined,
    because: 'it must clear the lower rail by 20 mm',
  }),
  atLeast({
    fields: [
      'upperRail.depth',
      'frame.kind',
      'frameJoint.railTenonWidth',
      'frameJoint.tenonDepth',
      'post.spacing',
      ...SLOPE,
      'bearer.reliefDepth',
    ],
    limit(v) {
      if (!isKind(v, 'posts')) return undefined;
      // The upper edge comes down over the length of the mortise, which lies at half the depth.
      const overMortise = WALL + slope(v) * v.frameJoint.tenonDepth;
      const overV = slope(v) * (v.post.spacing / 2) + v.bearer.reliefDepth + 10;
      return Math.max(v.frameJoint.railTenonWidth + 2 * overMortise, overV);
    },
    because: 'its tenons with 5 mm of wood on each side, and the V, must fit into it',
  }),
  atMost({
    fields: ['panelLeg.width', 'frame.kind', 'top.width', 'top.undersideEdgeSize'],
    limit: (v) => (isKind(v, 'panel') ? v.top.width - 2 * v.top.undersideEdgeSize : undefined),
    because: 'the leg must stay under the top',
  }),
  atLeast({
    fields: ['panelLeg.width', 'frame.kind', 'pad.length', 'pad.fromEnds'],
    limit: (v) => (isKind(v, 'panel') ? 2 * (v.pad.length + v.pad.fromEnds) + 10 : undefined),
    because: 'two pads must fit under it',
  }),
  atMost({
    fields: ['cleat.length', 'frame.kind', 'panelLeg.width'],
    limit: (v) => (isKind(v, 'panel') ? v.panelLeg.width : undefined),
    because: 'the cleat must not stand out beyond the leg',
  }),
];
