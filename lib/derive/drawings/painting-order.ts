import { type Cover, depthAt } from './cover.ts';
import { overlapPolygon } from './overlap-polygon.ts';
import { splitByPlane } from './split-by-plane.ts';

/** Something that is painted in one go: all triangles of a face, or one piece of it. They lie in one plane. */
export interface Patch {
  readonly covers: readonly Cover[];
}

/** Planes nearer to each other than this over an overlap hide nothing, mm. */
const CLOSE = 1e-3;

/** After so many rounds of cutting patches there is no order to be found. */
const MOST_ROUNDS = 20;

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
    const { order, rings } = sort(pairs(current));
    if (rings.length === 0) return order.map((index) => current[index]!);
    const cut = current.map((patch) => [patch]);
    for (const ring of rings) cutRing(cut, ring, current);
    if (cut.every((pieces) => pieces.length === 1)) return undefined;
    current = cut.flat();
  }
  return undefined;
}

/** For each patch the patches that lie behind it somewhere. */
function pairs(patches: readonly Patch[]): ReadonlySet<number>[] {
  const behind = patches.map(() => new Set<number>());
  const boxes = patches
    .flatMap(({ covers }, patch) => covers.map((cover) => boxOf(cover, patch)))
    .sort((a, b) => a.left - b.left);
  const isOpen = openPairs(patches, behind);
  const settle = (a: Box, b: Box): void => {
    const front = isOpen(a.patch, b.patch);
    const back = isOpen(b.patch, a.patch);
    if (!front && !back) return;
    const leads = leadsOf(a.cover, b.cover);
    if (front && leads.some((d) => d > CLOSE)) behind[a.patch]!.add(b.patch);
    if (back && leads.some((d) => d < -CLOSE)) behind[b.patch]!.add(a.patch);
  };
  for (let i = 0; i < boxes.length; i++) {
    const a = boxes[i]!;
    for (let j = i + 1; j < boxes.length && boxes[j]!.left < a.right; j++) {
      const b = boxes[j]!;
      if (a.patch !== b.patch && a.low < b.high && b.low < a.high) settle(a, b);
    }
  }
  return behind;
}

/** Tells whether it is still open that one patch lies in front of another: it may, and is not known to yet. */
function openPairs(patches: readonly Patch[], behind: readonly ReadonlySet<number>[]) {
  const may = patches.map(() => new Map<number, boolean>());
  return (front: number, back: number): boolean => {
    let open = may[front]!.get(back);
    if (open === undefined) {
      open = canLead(patches[front]!, patches[back]!);
      may[front]!.set(back, open);
    }
    return open && !behind[front]!.has(back);
  };
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
  const [p, q, r] = cover.corners;
  return {
    cover,
    patch,
    left: Math.min(p[0], q[0], r[0]),
    right: Math.max(p[0], q[0], r[0]),
    low: Math.min(p[1], q[1], r[1]),
    high: Math.max(p[1], q[1], r[1]),
  };
}

/** How far a corner must lie off a plane to count as lying on one side of it, mm: far below what `CLOSE` makes of it. */
const OFF = 1e-9;

/** Whether `a` may lie in front of `b`: a corner of it in front of the plane of `b`, and a corner of `b` behind its own. */
const canLead = (a: Patch, b: Patch): boolean => reaches(a, b, 1) && reaches(b, a, -1);

/** Whether a corner of `a` lies in front of the plane of `b`, or behind it where `side` is -1. */
function reaches(a: Patch, b: Patch, side: 1 | -1): boolean {
  const { normal, offset } = b.covers[0]!;
  const [x, y, z] = normal;
  for (const { corners } of a.covers) {
    for (const p of corners) if (side * (x * p[0] + y * p[1] + z * p[2] - offset) > OFF) return true;
  }
  return false;
}

/** How far `a` lies in front of `b` at the corners of their overlap, mm. */
const leadsOf = (a: Cover, b: Cover): number[] =>
  overlapPolygon(a, b).map(([x, y]) => depthAt(a, x, y) - depthAt(b, x, y));

interface Sorted {
  /** Every number after those behind it; right when there are no rings. */
  readonly order: number[];
  /** Each number is in front of the next one, the last in front of the first. */
  readonly rings: number[][];
}

function sort(behind: readonly ReadonlySet<number>[]): Sorted {
  const order: number[] = [];
  const rings: number[][] = [];
  const path: number[] = [];
  const state: ('open' | 'done' | undefined)[] = [];
  const visit = (index: number): void => {
    if (state[index] === 'open') rings.push(path.slice(path.indexOf(index)));
    if (state[index]) return;
    state[index] = 'open';
    path.push(index);
    for (const next of behind[index]!) visit(next);
    path.pop();
    state[index] = 'done';
    order.push(index);
  };
  for (const index of behind.keys()) visit(index);
  return { order, rings };
}

/**
 * Cuts what was left of the patches of a ring into triangles; when all are triangles, along the planes of all. Most rings
 * are gone after the first cut, which makes far fewer pieces.
 */
function cutRing(cut: Patch[][], ring: readonly number[], patches: readonly Patch[]): void {
  const hasWhole = ring.some((index) => patches[index]!.covers.length > 1);
  const planes = hasWhole ? [] : ring.map((index) => patches[index]!.covers[0]!);
  for (const index of ring) {
    const triangles = cut[index]!.flatMap(({ covers }) => covers);
    const pieces = planes.reduce((all, plane) => all.flatMap((cover) => splitByPlane(cover, plane)), triangles);
    cut[index] = pieces.map((cover) => ({ covers: [cover] }));
  }
}
