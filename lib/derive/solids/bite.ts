import { add, cross, dot, scale, sub, unit, type Vec3 } from '../../geometry/vec.ts';
import { insideLoop } from './inside.ts';
import type { Mouth } from './mouth.ts';
import type { Face, Solid } from './solid.ts';

/** Closer than this to the common edge counts as on it, mm. */
const ON_LINE = 1e-7;

/** A face that the axis of the pocket meets at less than this is only grazed: sine of 30 degrees. */
const GRAZED = 0.5;

/** An edge of the host's outer loop and the face on its other side. */
interface SharedEdge {
  readonly other: Face;
  readonly from: number;
  readonly to: number;
}

interface Step {
  readonly at: Vec3;
  /** 1 on the host, -1 on the other face, 0 on the edge between them. */
  readonly side: -1 | 0 | 1;
  /** Which ring point this is, or follows when it is a crossing. */
  readonly point: number;
  readonly crossing: boolean;
}

/**
 * Opens two faces for a ring that lies across their common edge: the ring is cut at the edge, and each face gets its part
 * as a bite out of its outer loop. The ring runs clockwise seen from outside, square to the direction `n`. A face that
 * looks the other way, or is only grazed, is not opened.
 *
 *      other │ ╭──╮
 *     ───────┼─┤  ├─────── common edge
 *      host  │ ╰──╯
 *
 * @returns the opened mouth, or undefined when no edge of the host splits the ring cleanly in two.
 */
export function bite(
  solid: Solid,
  host: Face,
  ring: readonly Vec3[],
  n: Vec3,
  slide: (f: Face, p: Vec3) => Vec3,
): Mouth | undefined {
  const way = Math.sign(dot(host.normal, n));
  for (const edge of sharedEdges(solid, host)) {
    if (way * dot(edge.other.normal, n) < GRAZED) continue;
    const steps = splitRing(solid, host, edge, ring, slide);
    const enters = steps.findIndex((s, i) => s.side === 0 && steps[(i + 1) % steps.length]!.side === 1);
    if (steps.filter((s) => s.side === 0).length !== 2 || enters < 0) continue;
    const turned = [...steps.slice(enters), ...steps.slice(0, enters)];
    const leaves = turned.findIndex((s, i) => i > 0 && s.side === 0);
    const clean = turned.every(
      (s, i) =>
        (i === 0 || i === leaves || s.side === (i < leaves ? 1 : -1)) &&
        (s.side === 0 || insideLoop(solid, s.side === 1 ? host : edge.other, s.at) === 'inside'),
    );
    if (clean && inOrder(solid, edge, turned[0]!.at, turned[leaves]!.at))
      return carve(solid, host, edge, turned, leaves);
  }
  return undefined;
}

function sharedEdges(solid: Solid, host: Face): SharedEdge[] {
  const loop = host.loops[0]!;
  return loop.flatMap((from, k) => {
    const to = loop[(k + 1) % loop.length]!;
    const other = solid.faces.find(
      (f) => f !== host && f.loops[0]!.some((i, m, l) => i === to && l[(m + 1) % l.length] === from),
    );
    return other ? [{ other, from, to }] : [];
  });
}

function splitRing(
  solid: Solid,
  host: Face,
  edge: SharedEdge,
  ring: readonly Vec3[],
  slide: (f: Face, p: Vec3) => Vec3,
): Step[] {
  const a = solid.vertices[edge.from]!;
  const along = unit(sub(solid.vertices[edge.to]!, a));
  const left = cross(host.normal, along);
  const flat = ring.map((p) => slide(host, p));
  const height = flat.map((p) => {
    const d = dot(left, sub(p, a));
    return Math.abs(d) < ON_LINE ? 0 : d;
  });
  const onEdge = (p: Vec3): Vec3 => add(a, scale(along, dot(along, sub(p, a))));
  return ring.flatMap((p, point) => {
    const here = height[point]!;
    const next = (point + 1) % ring.length;
    const there = height[next]!;
    const at = here > 0 ? flat[point]! : here < 0 ? slide(edge.other, p) : onEdge(flat[point]!);
    const steps: Step[] = [{ at, side: Math.sign(here) as Step['side'], point, crossing: false }];
    if (here * there < 0) {
      const t = here / (here - there);
      const cut = add(flat[point]!, scale(sub(flat[next]!, flat[point]!), t));
      steps.push({ at: onEdge(cut), side: 0, point, crossing: true });
    }
    return steps;
  });
}

/** True when both points lie within the edge, `first` nearer to its start. */
function inOrder(solid: Solid, edge: SharedEdge, first: Vec3, second: Vec3): boolean {
  const a = solid.vertices[edge.from]!;
  const along = sub(solid.vertices[edge.to]!, a);
  const whole = dot(along, along);
  const t = [first, second].map((p) => dot(along, sub(p, a)) / whole);
  return t[0]! > 1e-9 && t[1]! > t[0]! && t[1]! < 1 - 1e-9;
}

function carve(solid: Solid, host: Face, edge: SharedEdge, steps: readonly Step[], leaves: number): Mouth {
  const indices = steps.map((s) => {
    solid.vertices.push(s.at);
    return solid.vertices.length - 1;
  });
  splice(host, edge.from, indices.slice(0, leaves + 1));
  splice(edge.other, edge.to, [...indices.slice(leaves), indices[0]!]);
  const points: number[] = [];
  const crossings = new Map<number, number>();
  steps.forEach((s, i) => {
    if (s.crossing) crossings.set(s.point, indices[i]!);
    else points[s.point] = indices[i]!;
  });
  return { points, crossings };
}

function splice(face: Face, after: number, path: readonly number[]): void {
  const loop = face.loops[0]!;
  loop.splice(loop.indexOf(after) + 1, 0, ...path);
}
