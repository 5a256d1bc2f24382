import type { Rule } from '../../params/rule.ts';
import { atLeast, atMost } from './rule-kinds.ts';
import { stripSpans } from './strip-spans.ts';
import type { TrestleFields, TrestleValues } from './values.ts';

/** Least flat land between the two profiles of an edge, mm: common practice, no source. */
const LAND = 2;

/** Widths of strips that differ from the width of the top by less than this add up, mm. */
const ADDS_UP = 0.05;

const profileSum = (v: TrestleValues): number =>
  (v.top.showEdge === 'square' ? 0 : v.top.showEdgeSize) +
  (v.top.undersideEdge === 'square' ? 0 : v.top.undersideEdgeSize);

const narrowest = (v: TrestleValues): number =>
  Math.min(...stripSpans(v.top.strips, v.top.width).map((s) => s.to - s.from));

export const TOP_RULES: readonly Rule<TrestleFields>[] = [
  atMost({
    fields: ['top.edgeThickness', 'top.thickness'],
    limit: (v) => v.top.thickness,
    because: 'the upper limit is top.thickness',
  }),
  atLeast({
    fields: ['top.edgeThickness', 'top.showEdge', 'top.showEdgeSize', 'top.undersideEdge', 'top.undersideEdgeSize'],
    limit: (v) => profileSum(v) + LAND,
    because: 'the two profiles of the edge and 2 mm of flat between them must fit on it',
  }),
  {
    fields: ['top.strips', 'top.width'],
    check(v, say) {
      if (typeof v.top.strips === 'number') return undefined;
      const sum = v.top.strips.reduce((a, b) => a + b, 0);
      if (Math.abs(sum - v.top.width) <= ADDS_UP) return undefined;
      const because = `the strips add up to ${say(sum)} and the top is ${say(v.top.width)} wide`;
      return { path: 'top.strips', because, try: v.top.strips.length };
    },
  },
  atMost({
    fields: ['top.showLayer', 'top.layers', 'top.thickness'],
    limit: (v) => (v.top.layers === 2 ? v.top.thickness - 3 : undefined),
    because: 'under the show layer there must be at least 3 mm for a second one',
  }),
  atMost({
    fields: [
      'edgeJoint.gauge',
      'edgeJoint.tenons',
      'edgeJoint.tenonThickness',
      'top.layers',
      'top.showLayer',
      'top.thickness',
    ],
    limit: (v) =>
      v.edgeJoint.tenons
        ? (v.top.layers === 2 ? v.top.showLayer : v.top.thickness) - v.edgeJoint.tenonThickness / 2 - 1
        : undefined,
    because: 'the slots must lie in the show board, 1 mm of it below them',
  }),
  atLeast({
    fields: ['edgeJoint.gauge', 'edgeJoint.tenons', 'edgeJoint.tenonThickness'],
    limit: (v) => (v.edgeJoint.tenons ? v.edgeJoint.tenonThickness / 2 + 3 : undefined),
    because: 'at least 3 mm of wood must stay between a slot and the show face',
  }),
  atLeast({
    fields: ['edgeJoint.tenonWidth', 'edgeJoint.tenons', 'edgeJoint.tenonThickness'],
    limit: (v) => (v.edgeJoint.tenons ? v.edgeJoint.tenonThickness + 1 : undefined),
    because: 'a tenon with round edges is wider than thick',
  }),
  atLeast({
    fields: ['edgeJoint.slotDepth', 'edgeJoint.tenons', 'edgeJoint.depthPlay'],
    limit: (v) => (v.edgeJoint.tenons ? v.edgeJoint.depthPlay + 3 : undefined),
    because: 'the tenon must reach at least 3 mm into each strip',
  }),
  atMost({
    fields: ['edgeJoint.slotDepth', 'edgeJoint.tenons', 'top.strips', 'top.width'],
    limit: (v) => (v.edgeJoint.tenons ? narrowest(v) / 2 - 2 : undefined),
    because: 'slots from both sides of the narrowest strip must leave 4 mm between them',
  }),
  atLeast({
    fields: ['edgeJoint.first', 'edgeJoint.tenons', 'edgeJoint.tenonWidth', 'edgeJoint.endPlay'],
    limit: (v) => (v.edgeJoint.tenons ? v.edgeJoint.tenonWidth / 2 + v.edgeJoint.endPlay + 10 : undefined),
    because: 'at least 10 mm of wood must stay between the first slot and the end',
  }),
  atMost({
    fields: ['edgeJoint.first', 'edgeJoint.tenons', 'top.length', 'edgeJoint.tenonWidth'],
    limit: (v) => (v.edgeJoint.tenons ? v.top.length / 2 - v.edgeJoint.tenonWidth : undefined),
    because: 'the first and the last tenon must not meet',
  }),
  atLeast({
    fields: ['edgeJoint.spacing', 'edgeJoint.tenons', 'edgeJoint.tenonWidth'],
    limit: (v) => (v.edgeJoint.tenons ? 2.5 * v.edgeJoint.tenonWidth + 10 : undefined),
    because: 'tenons must not run into each other',
  }),
  atMost({
    fields: ['moisture.low', 'moisture.fitting'],
    limit: (v) => v.moisture.fitting,
    because: 'the driest is no damper than moisture.fitting',
  }),
  atLeast({
    fields: ['moisture.high', 'moisture.fitting'],
    limit: (v) => v.moisture.fitting,
    because: 'the dampest is no drier than moisture.fitting',
  }),
];
