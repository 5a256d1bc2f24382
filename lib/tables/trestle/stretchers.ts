import type { Frame } from '../../geometry/frame.ts';
import { looseTenonJoint } from '../../joints/loose-tenon-joint.ts';
import type { PlacedPart } from '../../model/assembly.ts';
import type { Composition } from '../../model/composition.ts';
import { stretcher } from '../../parts/board.ts';
import type { Mm } from '../../units/mm.ts';
import { type FrameParts, frameTenon } from './base-context.ts';

import type { TrestleValues } from './values.ts';

/** The stretchers between the two frames, each between a pair of posts, two rails or two panel legs. */
export function buildStretchers(
  values: TrestleValues,
  c: Composition,
  [a, b]: readonly [FrameParts, FrameParts],
  nextTenon: () => string,
): void {
  const { stretcher: s, frame, top, allowance } = values;
  const toPosts = frame.kind !== 'panel' && s.to === 'posts';
  const apart = toPosts ? values.post.spacing : s.spacing;
  const offsets: readonly Mm[] = s.count === 2 ? [-apart / 2, apart / 2] : s.count === 1 ? [0] : [];
  const thick = meetsThickness(values, toPosts);
  const from = frame.inset + thick / 2;
  const to = top.length - frame.inset - thick / 2;
  offsets.forEach((y, k) => {
    const name = offsets.length === 1 ? 'stretcher' : `stretcher-${k + 1}`;
    const placed = c.place(
      stretcher({
        id: name,
        mark: `S${k + 1}`,
        name: 'stretcher',
        wood: frame.wood,
        allowance,
        length: to - from,
        width: s.depth,
        thickness: s.thickness,
      }),
      { origin: [from, y + s.thickness / 2, s.height - s.depth / 2], x: [1, 0, 0], y: [0, 0, 1] },
    );
    // Frame B is turned half round, so its posts count from the other side.
    meet(
      values,
      c,
      placed,
      a,
      toPosts ? k : 0,
      { origin: [from, y, s.height], x: [-1, 0, 0], y: [0, 0, 1] },
      nextTenon,
    );
    meet(
      values,
      c,
      placed,
      b,
      toPosts ? 1 - k : 0,
      { origin: [to, y, s.height], x: [1, 0, 0], y: [0, 0, 1] },
      nextTenon,
    );
  });
}

function meetsThickness({ frame, panelLeg, post, lowerRail }: TrestleValues, toPosts: boolean): Mm {
  if (frame.kind === 'panel') return panelLeg.thickness;
  return toPosts ? post.thickness : lowerRail.thickness;
}

function meet(
  values: TrestleValues,
  c: Composition,
  placed: PlacedPart,
  frame: FrameParts,
  post: number,
  spot: Frame,
  nextTenon: () => string,
): void {
  const { stretcher: s, frameJoint } = values;
  const other = values.stretcher.to === 'posts' ? frame.posts[post]! : (frame.rail ?? frame.posts[0]!);
  const side = other.part.id.split('/')[0]!;
  c.join(
    looseTenonJoint({
      id: `${placed.part.id}/${side}`,
      kind: 'frame',
      between: [placed, other],
      spots: [spot],
      tenon: frameTenon(values, frameJoint.railTenonWidth),
      wood: values.frame.wood,
      mark: nextTenon,
      glueArea: s.thickness * s.depth,
      cut: `${placed.part.id}-${side}`,
    }),
  );
}
