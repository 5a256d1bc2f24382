import { looseTenonJoint } from '../../joints/loose-tenon-joint.ts';
import type { PlacedPart } from '../../model/assembly.ts';
import { bearer } from '../../parts/bearer.ts';
import { post } from '../../parts/post.ts';
import {
  type FrameContext,
  type FrameParts,
  frameTenon,
  inTable,
  leastUnderside,
  level,
  upright,
} from './base-context.ts';
import { fixTop } from './fix-top.ts';
import { lowerRail } from './lower-rail.ts';
import { padUnder } from './pads.ts';

/** Two posts from the floor to the underside, their upper ends scribed to it, with an upper rail that takes the top. */
export function postsFrame(context: FrameContext): FrameParts {
  const { values: v, c, name, index } = context;
  const length = v.post.spacing - v.post.width;
  const half = length / 2;
  const base = leastUnderside(context, -half, half, v.upperRail.thickness) - v.upperRail.depth;
  const railAt = inTable(context, level(length, v.upperRail.thickness, { across: 0, up: base }));
  const carrying = c.place(
    bearer({
      id: `frame-${name}/upper-rail`,
      mark: `U${index + 1}`,
      name: 'upper rail',
      kind: 'rail',
      wood: v.frame.wood,
      allowance: v.allowance,
      length,
      thickness: v.upperRail.thickness,
      fit: {
        underside: context.underside,
        frame: railAt,
        relief: { width: v.bearer.reliefWidth, depth: v.bearer.reliefDepth },
      },
    }),
    railAt,
  );
  const posts = [-1, 1].map((side, k) => placePost(context, side, k));
  posts.forEach((p, k) => {
    joinRail(context, carrying, p, k, base + v.upperRail.depth / 2);
  });
  const rail = lowerRail(context, posts);
  fixTop(context, { base: carrying, half, up: base, inwards: 0 });
  return { posts, ...(rail ? { rail } : {}) };
}

function placePost(context: FrameContext, side: number, k: number): PlacedPart {
  const { values: v, c, name, index } = context;
  const across = (side * v.post.spacing) / 2;
  const frame = inTable(context, upright(v.post.width, v.post.thickness, { across, up: v.pad.thickness }));
  const placed = c.place(
    post({
      id: `frame-${name}/post-${k + 1}`,
      mark: `P${2 * index + k + 1}`,
      name: 'post',
      wood: v.frame.wood,
      allowance: v.allowance,
      width: v.post.width,
      thickness: v.post.thickness,
      top: { underside: context.underside, frame },
    }),
    frame,
  );
  padUnder(context, placed, v.post.thickness, [across], `post-${k + 1}`, k);
  return placed;
}

function joinRail(context: FrameContext, carrying: PlacedPart, p: PlacedPart, k: number, up: number): void {
  const { values: v, c, name } = context;
  const side = k === 0 ? -1 : 1;
  const shoulder = (side * (v.post.spacing - v.post.width)) / 2;
  c.join(
    looseTenonJoint({
      id: `frame-${name}/upper-rail-post-${k + 1}`,
      kind: 'frame',
      between: [carrying, p],
      spots: [inTable(context, { origin: [shoulder, up, 0], x: [side, 0, 0], y: [0, 1, 0] })],
      tenon: frameTenon(v, v.frameJoint.railTenonWidth),
      wood: v.frame.wood,
      mark: context.nextTenon,
      glueArea: v.upperRail.depth * v.upperRail.thickness,
    }),
  );
}
