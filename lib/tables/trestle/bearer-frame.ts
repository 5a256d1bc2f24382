import { looseTenonJoint } from '../../joints/loose-tenon-joint.ts';
import type { PlacedPart } from '../../model/assembly.ts';
import { bearer } from '../../parts/bearer.ts';
import { foot } from '../../parts/foot.ts';
import { post } from '../../parts/post.ts';
import {
  type FrameContext,
  type FrameParts,
  frameTenon,
  hanging,
  inTable,
  leastUnderside,
  level,
  upright,
} from './base-context.ts';
import { fixTop } from './fix-top.ts';
import { lowerRail } from './lower-rail.ts';
import { padUnder } from './pads.ts';

/** Foot, two posts and a bearer whose upper edge takes the V of the underside. */
export function bearerFrame(context: FrameContext): FrameParts {
  const { values: v, c, name, index } = context;
  const half = v.bearer.length / 2;
  const base = leastUnderside(context, -half, half, v.bearer.thickness) - v.bearer.depth;
  const bearerFrameAt = inTable(context, level(v.bearer.length, v.bearer.thickness, { across: 0, up: base }));
  const carrying = c.place(
    bearer({
      id: `frame-${name}/bearer`,
      mark: `B${index + 1}`,
      name: 'bearer',
      wood: v.frame.wood,
      allowance: v.allowance,
      length: v.bearer.length,
      thickness: v.bearer.thickness,
      endRound: v.bearer.endRound,
      fit: {
        underside: context.underside,
        frame: bearerFrameAt,
        relief: { width: v.bearer.reliefWidth, depth: v.bearer.reliefDepth },
      },
    }),
    bearerFrameAt,
  );
  const standing = placeFoot(context);
  const posts = [-1, 1].map((side, k) => placePost(context, side, k, base));
  posts.forEach((p, k) => {
    joinPost(context, p, k, carrying, base);
    joinFoot(context, p, k, standing);
  });
  const rail = lowerRail(context, posts);
  fixTop(context, { base: carrying, half, up: base, inwards: 0 });
  return { posts, ...(rail ? { rail } : {}) };
}

function placeFoot(context: FrameContext): PlacedPart {
  const { values: v, c, name, index } = context;
  const fromEnds = v.pad.fromEnds + v.pad.length;
  const placed = c.place(
    foot({
      id: `frame-${name}/foot`,
      mark: `F${index + 1}`,
      name: 'foot',
      wood: v.frame.wood,
      allowance: v.allowance,
      length: v.foot.length,
      depth: v.foot.height - v.pad.thickness,
      thickness: v.foot.thickness,
      arch: { rise: v.foot.archRise, fromEnds: fromEnds + v.pad.fromEnds },
    }),
    inTable(context, hanging(v.foot.length, v.foot.thickness, { across: 0, up: v.foot.height })),
  );
  const across = v.foot.length / 2 - v.pad.fromEnds - v.pad.length / 2;
  padUnder(context, placed, v.foot.thickness, [-across, across]);
  return placed;
}

function placePost(context: FrameContext, side: number, k: number, shoulder: number): PlacedPart {
  const { values: v, c, name, index } = context;
  const across = (side * v.post.spacing) / 2;
  return c.place(
    post({
      id: `frame-${name}/post-${k + 1}`,
      mark: `P${2 * index + k + 1}`,
      name: 'post',
      wood: v.frame.wood,
      allowance: v.allowance,
      width: v.post.width,
      thickness: v.post.thickness,
      top: { length: shoulder - v.foot.height },
    }),
    inTable(context, upright(v.post.width, v.post.thickness, { across, up: v.foot.height })),
  );
}

const acrossOf = (context: FrameContext, k: number): number => ((k === 0 ? -1 : 1) * context.values.post.spacing) / 2;

function joinPost(context: FrameContext, p: PlacedPart, k: number, carrying: PlacedPart, base: number): void {
  const { values: v, c, name } = context;
  c.join(
    looseTenonJoint({
      id: `frame-${name}/post-${k + 1}-bearer`,
      kind: 'frame',
      between: [p, carrying],
      spots: [inTable(context, { origin: [acrossOf(context, k), base, 0], x: [0, 1, 0], y: [1, 0, 0] })],
      tenon: frameTenon(v, v.frameJoint.postTenonWidth),
      wood: v.frame.wood,
      mark: context.nextTenon,
      glueArea: v.post.width * Math.min(v.post.thickness, v.bearer.thickness),
    }),
  );
}

function joinFoot(context: FrameContext, p: PlacedPart, k: number, standing: PlacedPart): void {
  const { values: v, c, name } = context;
  c.join(
    looseTenonJoint({
      id: `frame-${name}/post-${k + 1}-foot`,
      kind: 'frame',
      between: [p, standing],
      spots: [inTable(context, { origin: [acrossOf(context, k), v.foot.height, 0], x: [0, -1, 0], y: [1, 0, 0] })],
      tenon: frameTenon(v, v.frameJoint.postTenonWidth),
      wood: v.frame.wood,
      mark: context.nextTenon,
      glueArea: v.post.width * Math.min(v.post.thickness, v.foot.thickness),
    }),
  );
}
