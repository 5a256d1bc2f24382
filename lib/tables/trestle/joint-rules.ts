import type { Rule } from '../../params/rule.ts';
import { atLeast, atMost } from './rule-kinds.ts';
import { hasLowerRail, hasStretchers, isKind, meetsPosts, meetsRail, UNDER, under, WALL } from './rule-values.ts';
import type { TrestleFields } from './values.ts';

export const JOINT_RULES: readonly Rule<TrestleFields>[] = [
  {
    fields: ['stretcher.to', 'stretcher.count', 'frame.kind'],
    check: (v) =>
      meetsPosts(v) && v.stretcher.count === 1
        ? { path: 'stretcher.to', because: 'one stretcher between two posts would stand off the middle', try: 'rail' }
        : undefined,
  },
  {
    fields: ['lowerRail.use', 'stretcher.to', 'stretcher.count', 'frame.kind'],
    check: (v) =>
      meetsRail(v) && !v.lowerRail.use
        ? { path: 'lowerRail.use', because: 'the stretchers meet a lower rail', try: true }
        : undefined,
  },
  atMost({
    fields: ['frameJoint.tenonDepth', 'frame.kind', 'stretcher.count', 'stretcher.to', 'lowerRail.thickness'],
    limit: (v) => (meetsRail(v) ? v.lowerRail.thickness - WALL : undefined),
    because: 'the mortise of the stretcher must leave 5 mm of lowerRail.thickness',
  }),
  atMost({
    fields: ['frameJoint.tenonDepth', 'frame.kind', 'stretcher.count', 'stretcher.to', 'post.thickness'],
    limit: (v) => (meetsPosts(v) ? v.post.thickness - WALL : undefined),
    because: 'the mortise of the stretcher must leave 5 mm of post.thickness',
  }),
  atMost({
    fields: ['frameJoint.tenonDepth', 'frame.kind', 'stretcher.count', 'panelLeg.thickness'],
    limit: (v) => (isKind(v, 'panel') && hasStretchers(v) ? v.panelLeg.thickness - WALL : undefined),
    because: 'the mortise of the stretcher must leave 5 mm of panelLeg.thickness',
  }),
  atMost({
    fields: ['frameJoint.tenonDepth', 'frame.kind', 'lowerRail.use', 'post.width'],
    limit: (v) => (!isKind(v, 'panel') && (v.lowerRail.use || isKind(v, 'posts')) ? v.post.width - WALL : undefined),
    because: 'the mortise of a rail must leave 5 mm of post.width',
  }),
  atLeast({
    fields: ['frameJoint.tenonDepth', 'frameJoint.depthPlay'],
    limit: (v) => v.frameJoint.depthPlay + 8,
    because: 'the tenon must reach at least 8 mm into each part',
  }),
  atMost({
    fields: [
      'frameJoint.tenonThickness',
      'frame.kind',
      'post.thickness',
      'bearer.thickness',
      'foot.thickness',
      'upperRail.thickness',
    ],
    limit: (v) => {
      if (isKind(v, 'panel')) return undefined;
      const other = isKind(v, 'bearer') ? Math.min(v.bearer.thickness, v.foot.thickness) : v.upperRail.thickness;
      return Math.min(v.post.thickness, other) - 2 * WALL;
    },
    because: 'a mortise must leave 5 mm of wood on both sides, in posts, bearer, foot and rails',
  }),
  atMost({
    fields: ['frameJoint.tenonThickness', 'frame.kind', 'lowerRail.use', 'lowerRail.thickness'],
    limit: (v) => (hasLowerRail(v) ? v.lowerRail.thickness - 2 * WALL : undefined),
    because: 'a mortise must leave 5 mm of wood on both sides in the lower rail',
  }),
  atMost({
    fields: ['frameJoint.tenonThickness', 'stretcher.count', 'stretcher.thickness'],
    limit: (v) => (hasStretchers(v) ? v.stretcher.thickness - 2 * WALL : undefined),
    because: 'a mortise must leave 5 mm of wood on both sides in the stretcher',
  }),
  atMost({
    fields: ['frameJoint.postTenonWidth', 'frame.kind', 'post.width', 'frameJoint.endPlay'],
    limit: (v) => (isKind(v, 'bearer') ? v.post.width - 2 * (WALL + v.frameJoint.endPlay) : undefined),
    because: 'the tenon must leave 5 mm of post.width on both sides',
  }),
  atLeast({
    fields: ['frameJoint.postTenonWidth', 'frameJoint.tenonThickness', 'frame.kind'],
    limit: (v) => (isKind(v, 'bearer') ? v.frameJoint.tenonThickness + 1 : undefined),
    because: 'a tenon with round edges is wider than thick',
  }),
  atMost({
    fields: [
      'frameJoint.railTenonWidth',
      'frame.kind',
      'lowerRail.use',
      'lowerRail.depth',
      'stretcher.count',
      'stretcher.depth',
      'frameJoint.endPlay',
    ],
    limit: (v) => {
      const depths = [
        ...(hasLowerRail(v) ? [v.lowerRail.depth] : []),
        ...(hasStretchers(v) ? [v.stretcher.depth] : []),
      ];
      return depths.length > 0 ? Math.min(...depths) - 2 * (WALL + v.frameJoint.endPlay) : undefined;
    },
    because: 'the tenon must leave 5 mm of rail and stretcher above and below',
  }),
  atLeast({
    fields: ['frameJoint.railTenonWidth', 'frameJoint.tenonThickness'],
    limit: (v) => v.frameJoint.tenonThickness + 1,
    because: 'a tenon with round edges is wider than thick',
  }),
  atMost({
    fields: [
      'stretcher.spacing',
      'stretcher.count',
      'stretcher.to',
      'frame.kind',
      'stretcher.thickness',
      'post.spacing',
      'post.width',
      'panelLeg.width',
    ],
    limit: (v) => {
      if (v.stretcher.count !== 2 || meetsPosts(v)) return undefined;
      return (isKind(v, 'panel') ? v.panelLeg.width : v.post.spacing - v.post.width) - v.stretcher.thickness;
    },
    because: 'both stretchers must meet the rail or the leg',
  }),
  atLeast({
    fields: ['stretcher.spacing', 'stretcher.count', 'stretcher.to', 'frame.kind', 'stretcher.thickness'],
    limit: (v) => (v.stretcher.count === 2 && !meetsPosts(v) ? v.stretcher.thickness + 5 : undefined),
    because: 'the two stretchers must not touch',
  }),
  atMost({
    fields: ['stretcher.thickness', 'stretcher.count', 'stretcher.to', 'frame.kind', 'post.width'],
    limit: (v) => (meetsPosts(v) ? v.post.width : undefined),
    because: 'it must meet a post with its whole end',
  }),
  atLeast({
    fields: [
      'stretcher.height',
      'frame.kind',
      'stretcher.count',
      'stretcher.depth',
      'lowerRail.use',
      'lowerRail.depth',
      'foot.height',
      'pad.thickness',
    ],
    limit: (v) => {
      const deep = Math.max(hasStretchers(v) ? v.stretcher.depth : 0, hasLowerRail(v) ? v.lowerRail.depth : 0);
      if (deep === 0) return undefined;
      return (isKind(v, 'bearer') ? v.foot.height : v.pad.thickness) + deep / 2;
    },
    because: 'rail and stretcher must lie over the foot',
  }),
  atMost({
    fields: [
      'stretcher.height',
      'frame.kind',
      'stretcher.count',
      'stretcher.depth',
      'lowerRail.use',
      'lowerRail.depth',
      'bearer.depth',
      'cleat.depth',
      ...UNDER,
      'bearer.length',
      'cleat.length',
    ],
    limit: (v) => {
      const deep = Math.max(hasStretchers(v) ? v.stretcher.depth : 0, hasLowerRail(v) ? v.lowerRail.depth : 0);
      if (deep === 0 || isKind(v, 'posts')) return undefined;
      const { depth, length } = isKind(v, 'panel') ? v.cleat : v.bearer;
      return under(v, length / 2) - depth - deep / 2 - 5;
    },
    because: 'rail and stretcher must stay 5 mm under the bearer or the cleat',
  }),
  atMost({
    fields: ['pad.thickness', 'frame.kind', 'foot.height'],
    limit: (v) => (isKind(v, 'bearer') ? v.foot.height - 10 : undefined),
    because: 'the pad is part of foot.height',
  }),
];
