import type { Vec3 } from '../../geometry/vec.ts';
import { earcut } from './earcut.ts';
import { flatAxes } from './inside.ts';
import type { Face, Solid } from './solid.ts';

/** Triangles of a solid: three vertex indices each, counter-clockwise seen from outside. */
export type Triangles = number[];

/** All faces of a solid as triangles. Every edge of every loop is an edge of exactly one triangle. */
export function triangulate(solid: Solid): Triangles {
  const out: Triangles = [];
  for (const f of solid.faces) triangulateFace(solid.vertices, f, out);
  return out;
}

/**
 * Appends the triangles of one face. Loops that cross each other, as pockets that should be refused make them, cannot be
 * covered; they get the triangles that earcut finds.
 */
export function triangulateFace(vertices: readonly Vec3[], f: Face, out: Triangles): void {
  const outer = f.loops[0]!;
  if (f.loops.length === 1 && isConvex(vertices, outer, f.normal)) {
    for (let k = 2; k < outer.length; k++) out.push(outer[0]!, outer[k - 1]!, outer[k]!);
    return;
  }
  const [u, v] = flatAxes(f.normal);
  const straight = new Map<string, number>();
  const flat: number[] = [];
  const index: number[] = [];
  const holes: number[] = [];
  f.loops.forEach((loop, l) => {
    if (l > 0) holes.push(index.length);
    for (const i of corners(vertices, loop, straight)) {
      flat.push(vertices[i]![u], vertices[i]![v]);
      index.push(i);
    }
  });
  const triangles = cover(flat, holes);
  // earcut keeps the turn of the flat outline; the dropped axis tells whether that is the turn of the face.
  const flip = flatTurn(vertices, outer, u, v) < 0 === triangleTurn(flat, triangles) < 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const a = index[triangles[t]!]!;
    const b = index[triangles[t + (flip ? 1 : 2)]!]!;
    const c = index[triangles[t + (flip ? 2 : 1)]!]!;
    if (straight.size === 0) out.push(a, b, c);
    else putSplit(straight, a, b, c, out);
  }
}

/** Ways to look at an outline, radians. */
const LOOKS = [0.4, 1.3, 2.2, 2.9];

/**
 * The triangles of a flat outline with holes. earcut joins holes to the outline by bridges and may lose a corner that is
 * in line with one; seen from another side the bridges are others.
 */
function cover(flat: readonly number[], holes: readonly number[]): readonly number[] {
  const whole = 3 * (flat.length / 2 + 2 * holes.length - 2);
  const first = earcut(flat, holes);
  if (first.length === whole) return first;
  const others = LOOKS.map((look) => earcut(turned(flat, look), holes));
  return others.find((triangles) => triangles.length === whole) ?? first;
}

function turned(flat: readonly number[], by: number): number[] {
  const [c, s] = [Math.cos(by), Math.sin(by)];
  return flat.map((here, k) => (k % 2 === 0 ? c * here - s * flat[k + 1]! : s * flat[k - 1]! + c * here));
}

/** Appends a triangle, split at the points that lie straight on its sides. */
function putSplit(straight: ReadonlyMap<string, number>, a: number, b: number, c: number, out: Triangles): void {
  for (const [i, j, k] of [
    [a, b, c],
    [b, c, a],
    [c, a, b],
  ] as const) {
    const m = straight.get(`${i},${j}`);
    if (m !== undefined) {
      putSplit(straight, i, m, k, out);
      putSplit(straight, m, j, k, out);
      return;
    }
  }
  out.push(a, b, c);
}

/**
 * The true corners of a loop. A point in the middle of a straight run would get lost in the triangulation: it is left out
 * and noted under the corners it lies between, the first of a run for the whole run and the rest behind it.
 */
function corners(vertices: readonly Vec3[], loop: readonly number[], straight: Map<string, number>): readonly number[] {
  const cornerAt = (k: number): boolean => {
    const before = vertices[loop[(k + loop.length - 1) % loop.length]!]!;
    return !isStraight(before, vertices[loop[k]!]!, vertices[loop[(k + 1) % loop.length]!]!);
  };
  let all = true;
  for (let k = 0; k < loop.length && all; k++) all = cornerAt(k);
  if (all) return loop;
  const isCorner = loop.map((_, k) => cornerAt(k));
  const first = isCorner.indexOf(true);
  const turned = [...loop.slice(first), ...loop.slice(0, first)];
  const corner = [...isCorner.slice(first), ...isCorner.slice(0, first)];
  const kept = turned.filter((_, k) => corner[k]);
  let start = 0;
  for (let k = 1; k <= turned.length; k++) {
    if (k < turned.length && !corner[k]) continue;
    const end = turned[k % turned.length]!;
    for (let m = start + 1; m < k; m++) straight.set(`${turned[m - 1]!},${end}`, turned[m]!);
    start = k;
  }
  return kept;
}

/** Closer to the line between its neighbours than a hundred-millionth of their distance: no corner. */
function isStraight(a: Vec3, b: Vec3, c: Vec3): boolean {
  const px = b[0] - a[0];
  const py = b[1] - a[1];
  const pz = b[2] - a[2];
  const qx = c[0] - b[0];
  const qy = c[1] - b[1];
  const qz = c[2] - b[2];
  const x = py * qz - pz * qy;
  const y = pz * qx - px * qz;
  const z = px * qy - py * qx;
  return x * x + y * y + z * z <= 1e-16 * (px * px + py * py + pz * pz) * (qx * qx + qy * qy + qz * qz);
}

/** True when every corner turns the same way, none of them straight. Larger loops are left to the general way. */
function isConvex(vertices: readonly Vec3[], loop: readonly number[], normal: Vec3): boolean {
  const count = loop.length;
  if (count > MOST_FANNED) return false;
  const [u, v] = flatAxes(normal);
  let sign = 0;
  let a = vertices[loop[count - 2]!]!;
  let b = vertices[loop[count - 1]!]!;
  for (let k = 0; k < count; k++) {
    const c = vertices[loop[k]!]!;
    const now = Math.sign((b[u] - a[u]) * (c[v] - b[v]) - (b[v] - a[v]) * (c[u] - b[u]));
    if (now === 0 || (sign !== 0 && now !== sign) || isStraight(a, b, c)) return false;
    sign = now;
    a = b;
    b = c;
  }
  return true;
}

/** The floor of a round-ended pocket; a fan over more corners would make slivers. */
const MOST_FANNED = 10;

function flatTurn(vertices: readonly Vec3[], loop: readonly number[], u: 0 | 1 | 2, v: 0 | 1 | 2): number {
  let twice = 0;
  let a = vertices[loop[loop.length - 1]!]!;
  for (const i of loop) {
    const b = vertices[i]!;
    twice += a[u] * b[v] - b[u] * a[v];
    a = b;
  }
  return twice;
}

function triangleTurn(flat: readonly number[], triangles: readonly number[]): number {
  let twice = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [triangles[t]! * 2, triangles[t + 1]! * 2, triangles[t + 2]! * 2];
    twice +=
      (flat[b]! - flat[a]!) * (flat[c + 1]! - flat[a + 1]!) - (flat[b + 1]! - flat[a + 1]!) * (flat[c]! - flat[a]!);
  }
  return twice;
}
