import { looseTenonJoint } from '../../joints/loose-tenon-joint.ts';
import type { PlacedPart } from '../../model/assembly.ts';
import { rail } from '../../parts/board.ts';
import { type FrameContext, frameTenon, inTable, level } from './base-context.ts';

/** The rail between the two posts of a frame, at the height of the stretchers; undefined when the design has none. */
export function lowerRail(context: FrameContext, posts: readonly PlacedPart[]): PlacedPart | undefined {
  const { values: v, c, name, index } = context;
  if (!v.lowerRail.use) return undefined;
  const length = v.post.spacing - v.post.width;
  const up = v.stretcher.height - v.lowerRail.depth / 2;
  const placed = c.place(
    rail({
      id: `frame-${name}/lower-rail`,
      mark: `R${index + 1}`,
      name: 'lower rail',
      wood: v.frame.wood,
      allowance: v.allowance,
      length,
      width: v.lowerRail.depth,
      thickness: v.lowerRail.thickness,
    }),
    inTable(context, level(length, v.lowerRail.thickness, { across: 0, up })),
  );
  posts.forEach((p, k) => {
    const side = k === 0 ? -1 : 1;
    c.join(
      looseTenonJoint({
        id: `frame-${name}/lower-rail-post-${k + 1}`,
        kind: 'frame',
        between: [placed, p],
        spots: [
          inTable(context, { origin: [(side * length) / 2, v.stretcher.height, 0], x: [side, 0, 0], y: [0, 1, 0] }),
        ],
        tenon: frameTenon(v, v.frameJoint.railTenonWidth),
        wood: v.frame.wood,
        mark: context.nextTenon,
        glueArea: v.lowerRail.depth * Math.min(v.lowerRail.thickness, v.post.thickness),
      }),
    );
  });
  return placed;
}
