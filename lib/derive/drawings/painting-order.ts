import { type Cover, depthAt } from './cover.ts';
import { overlapPolygon } from './overlap-polygon.ts';
import { splitByPlane } from './split-by-plane.ts';

/** Something that is painted in one go: all triangles of a face, or one piece of it. */
export interface Patch {
  readonly covers: readonly Cover[];
}

/** Planes nearer to each other than this over an overlap hide nothing, mm. */
const CLOSE = 1e-3;

/** After so many rounds of cutting patches there is no order to be found. */
const MOST_ROUNDS = 40;

/**
 * The patches in an order of painting in which nothing is painted over by what lies behind it; undefined when none was
 * found.
 *
 * For every two triangles that overlap in the view it is settled which lies in front, over the whole overlap; the order
 * obeys every such pair, so it is right at every point. Where patches lie in a ring, each before the next, or run through
 * each other, those in the ring are cut: first into their triangles, then along each other's planes.
 */
export function paintingOrder(patches: readonly Patch[]): Patch[] | undefined {
  let current = [...patches];
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const sorted = sort(current.length, pairs(current));
    if (sorted.order) return sorted.order.map((index) => current[index]!);
    const ring = sorted.ring.map((index) => current[index]!);
    const cut = cutRing(ring);
    if (cut.length === ring.length) return undefined;
    current = [...current.filter((patch) => !ring.includes(patch)), ...cut];
  }
  return undefined;
}

/** For each patch the patches that lie behind it somewhere. */
function pairs(patches: readonly Patch[]): ReadonlySet<number>[] {
  const behind = patches.map(() => new Set<number>());
  const boxes = patches
    .flatMap(({ covers }, patch) => covers.map((cover) => boxOf(cover, patch)))
    .sort((a, b) => a.left - b.left);
  boxes.forEach((a, i) => {
    for (let j = i + 1; j < boxes.length && boxes[j]!.left < a.right; j++) {
      const b = boxes[j]!;
      if (a.patch === b.patch || a.low >= b.high || b.low >= a.high) continue;
      const { front, back } = lead(a.cover, b.cover);
      if (front) behind[a.patch]!.add(b.patch);
      if (back) behind[b.patch]!.add(a.patch);
    }
  });
  return behind;
}

interface Box {
  readonly cover: Cover;
  readonly patch: number;
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
}

function boxOf(cover: Cover, patch: number): Box {
  const x = cover.corners.map((p) => p[0]);
  const y = cover.corners.map((p) => p[1]);
  return { cover, patch, left: Math.min(...x), right: Math.max(...x), low: Math.min(...y), high: Math.max(...y) };
}

/** Whether `a` lies in front of `b` somewhere, and whether behind. */
function lead(a: Cover, b: Cover): { readonly front: boolean; readonly back: boolean } {
  const leads = overlapPolygon(a, b).map(([x, y]) => depthAt(a, x, y) - depthAt(b, x, y));
  return { front: leads.some((d) => d > CLOSE), back: leads.some((d) => d < -CLOSE) };
}

type Sorted = { readonly order: number[]; readonly ring?: never } | { readonly order?: never; readonly ring: number[] };

/** Every number after those behind it; or a ring in which each is behind the one before it. */
function sort(count: number, behind: readonly ReadonlySet<number>[]): Sorted {
  const order: number[] = [];
  const state = new Uint8Array(count);
  const path: number[] = [];
  /** @returns the start of a ring. */
  const visit = (index: number): number | undefined => {
    if (state[index] === 2) return undefined;
    if (state[index] === 1) return index;
    state[index] = 1;
    path.push(index);
    for (const next of behind[index]!) {
      const ring = visit(next);
      if (ring !== undefined) return ring;
    }
    path.pop();
    state[index] = 2;
    order.push(index);
    return undefined;
  };
  for (let index = 0; index < count; index++) {
    const ring = visit(index);
    if (ring !== undefined) return { ring: path.slice(path.indexOf(ring)) };
  }
  return { order };
}

/** The patches of a ring in smaller pieces; as many as they were when nothing can be cut. */
function cutRing(ring: readonly Patch[]): Patch[] {
  if (ring.some(({ covers }) => covers.length > 1))
    return ring.flatMap(({ covers }) => covers.map((c) => ({ covers: [c] })));
  return ring.flatMap(({ covers }, k) => {
    const plane = ring[(k + 1) % ring.length]!.covers[0]!;
    return covers.flatMap((cover) => splitByPlane(cover, plane)).map((c) => ({ covers: [c] }));
  });
}
