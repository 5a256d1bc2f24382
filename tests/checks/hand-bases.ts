import type { Assembly, PlacedPart } from '../../lib/model/assembly.ts';
import type { SpeciesId } from '../../lib/wood/species-id.ts';
import { across, type HandTable, handTable, lengthwise, type Size, standing } from './hand-table.ts';

/** A table on frames of two posts and a bearer, with or without an equal rail at the floor. */
export interface PostFrames {
  /** mm, show face over the floor. */
  readonly height: number;
  /** Where the frames stand, mm from the end of the top. */
  readonly at: readonly number[];
  readonly length: number;
  /** Thickness of the flat top, mm. */
  readonly top: number;
  /** Between post axes, mm. */
  readonly apart: number;
  /** mm along the table and across it. */
  readonly post: readonly [along: number, across: number];
  /** mm, thickness and depth of bearer and foot. */
  readonly bearer: readonly [thickness: number, depth: number];
  readonly foot: boolean;
  readonly pads: boolean;
  /** Two, from post to post, or none. */
  readonly stretchers: boolean;
  readonly wood?: SpeciesId;
  /** What else stands there. */
  readonly more?: (table: HandTable) => void;
}

export const POST_FRAMES: PostFrames = {
  height: 700,
  at: [300, 1300],
  length: 1600,
  top: 20,
  apart: 500,
  post: [60, 60],
  bearer: [60, 70],
  foot: false,
  pads: true,
  stretchers: true,
};

export function postFrames(given: Partial<PostFrames> = {}): Assembly {
  const t: PostFrames = { ...POST_FRAMES, ...given };
  const table = handTable(t.height, [t.length, t.apart + 300, t.top], t.wood);
  const frames = t.at.map((x, k) => postFrame(t, table, x, `frame-${'abcd'[k]}`));
  if (t.stretchers && frames.length === 2) {
    const [a, b] = frames as [Frame, Frame];
    for (const k of [0, 1] as const) {
      const [from, to] = [t.at[0]! + t.post[0] / 2, t.at[1]! - t.post[0] / 2];
      const y = ((k === 0 ? -1 : 1) * t.apart) / 2;
      const size: Size = [to - from, 90, 30];
      const piece = table.put('stretcher', `stretcher-${k + 1}`, size, lengthwise(size, from, y, t.height / 2 - 45));
      table.join(piece, a.posts[k], [from, y, t.height / 2], [-1, 0, 0], [0, 0, 1]);
      table.join(piece, b.posts[k], [to, y, t.height / 2], [1, 0, 0], [0, 0, 1]);
    }
  }
  t.more?.(table);
  return table.done();
}

interface Frame {
  readonly posts: readonly [PlacedPart, PlacedPart];
}

function postFrame(t: PostFrames, table: HandTable, x: number, id: string): Frame {
  const [thickness, depth] = t.bearer;
  const level: Size = [t.apart + 100, depth, thickness];
  const floor = t.pads ? 1 : 0;
  const shoulder = t.height - t.top - depth;
  const foot = t.foot ? table.put('foot', `${id}/foot`, level, across(level, x, 0, floor)) : undefined;
  const up = floor + (foot ? depth : 0);
  const size: Size = [shoulder - up, t.post[1], t.post[0]];
  const bearer = table.put('bearer', `${id}/bearer`, level, across(level, x, 0, shoulder));
  const posts = [-1, 1].map((side, k) => {
    const y = (side * t.apart) / 2;
    const post = table.put('post', `${id}/post-${k + 1}`, size, standing(size, x, y, up));
    table.join(post, bearer, [x, y, shoulder], [0, 0, 1], [0, 1, 0]);
    if (foot) table.join(post, foot, [x, y, up], [0, 0, -1], [0, 1, 0]);
    if (t.pads) table.pad(foot ?? post, x, y);
    return post;
  }) as unknown as Frame['posts'];
  table.screw(bearer, [x, 0, shoulder]);
  return { posts };
}

/** Four legs at the corners, aprons between them all round, screwed to the top; no pads. */
export function fourLegs(wood?: SpeciesId, withPads = false): Assembly {
  const [length, width, height, leg, depth] = [1200, 700, 740, 60, 100];
  const table = handTable(height, [length, width, 22], wood);
  const [left, right] = [80, length - 80];
  const side = width / 2 - 80;
  const up = height - 22 - depth;
  const size: Size = [height - 22 - (withPads ? 1 : 0), leg, leg];
  const legs = [left, right].map((x, i) =>
    [-side, side].map((y, k) => {
      const piece = table.put('post', `leg-${2 * i + k + 1}`, size, standing(size, x, y, withPads ? 1 : 0));
      if (withPads) table.pad(piece, x, y);
      return piece;
    }),
  );
  const middle = up + depth / 2;
  [left, right].forEach((x, i) => {
    const apron: Size = [2 * side - leg, depth, 22];
    const piece = table.put('rail', `short-${i + 1}`, apron, across(apron, x, 0, up));
    [-1, 1].forEach((s, k) => {
      table.join(piece, legs[i]![k]!, [x, s * (side - leg / 2), middle], [0, s, 0], [0, 0, 1]);
    });
    table.screw(piece, [x, 0, up]);
  });
  [-side, side].forEach((y, k) => {
    const apron: Size = [right - left - leg, depth, 22];
    const piece = table.put('rail', `long-${k + 1}`, apron, lengthwise(apron, left + leg / 2, y, up));
    [left + leg / 2, right - leg / 2].forEach((x, i) => {
      table.join(piece, legs[i]![k]!, [x, y, middle], [i === 0 ? -1 : 1, 0, 0], [0, 0, 1]);
    });
    table.screw(piece, [(left + right) / 2, y, up]);
  });
  return table.done();
}
