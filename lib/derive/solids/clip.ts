import type { Vec3 } from '../../geometry/vec.ts';
import { type Face, face, type Solid } from './solid.ts';

/** Vertices closer than this to the cut lie on it, mm. */
const ON = 1e-7;

/**
 * The part of a convex solid where `distance` is not positive; the cut becomes one face named `surface`.
 *
 * Handled: convex solids without holes in their faces. A solid that the cut misses comes back as it is.
 *
 * @throws RangeError when nothing is left.
 */
export function clipConvex(solid: Solid, distance: (p: Vec3) => number, surface: string): Solid {
  const d = solid.vertices.map((p) => {
    const value = distance(p);
    return Math.abs(value) < ON ? 0 : value;
  });
  if (d.every((value) => value <= 0)) return solid;
  if (d.every((value) => value >= 0)) throw new RangeError(`nothing is left of the solid at the cut ${surface}`);

  const vertices: Vec3[] = [];
  const kept = new Map<number | string, number>();
  const vertex = (key: number | string, point: () => Vec3): number => {
    const known = kept.get(key);
    if (known !== undefined) return known;
    kept.set(key, vertices.length);
    vertices.push(point());
    return vertices.length - 1;
  };
  const crossing = (i: number, j: number): number => {
    const [a, b] = i < j ? [i, j] : [j, i];
    return vertex(`${a}-${b}`, () => between(solid.vertices[a]!, solid.vertices[b]!, d[a]! / (d[a]! - d[b]!)));
  };

  const faces: Face[] = [];
  const capNext = new Map<number, number>();
  for (const { loops, normal, surface: name } of solid.faces) {
    const loop = loops[0]!;
    const outside = loop.some((i) => d[i]! > 0);
    const inside = loop.some((i) => d[i]! < 0);
    if (!inside) {
      // The whole face goes; where it touches the cut with an edge, the cut takes its place there.
      if (outside) linkOnEdges(loop);
      continue;
    }
    const cut: number[] = [];
    loop.forEach((i, k) => {
      const j = loop[(k + 1) % loop.length]!;
      if (d[i]! <= 0) cut.push(vertex(i, () => solid.vertices[i]!));
      if (d[i]! * d[j]! < 0) cut.push(crossing(i, j));
    });
    if (outside) linkCut(loop, cut);
    faces.push({ normal, loops: [cut], surface: name });
  }
  faces.push(face(vertices, surface, chain(capNext)));
  return { vertices, faces };

  function linkOnEdges(loop: readonly number[]): void {
    loop.forEach((i, k) => {
      const j = loop[(k + 1) % loop.length]!;
      if (d[i] === 0 && d[j] === 0) {
        capNext.set(
          vertex(i, () => solid.vertices[i]!),
          vertex(j, () => solid.vertices[j]!),
        );
      }
    });
  }

  /** The new edge of a cut face runs from where the loop leaves to where it comes back; the cap runs the other way. */
  function linkCut(loop: readonly number[], cut: readonly number[]): void {
    const onCut = new Set<number>();
    loop.forEach((i, k) => {
      const j = loop[(k + 1) % loop.length]!;
      if (d[i] === 0) onCut.add(kept.get(i)!);
      if (d[i]! * d[j]! < 0) onCut.add(crossing(i, j));
    });
    cut.forEach((a, k) => {
      const b = cut[(k + 1) % cut.length]!;
      if (onCut.has(a) && onCut.has(b)) capNext.set(b, a);
    });
  }
}

const between = (a: Vec3, b: Vec3, t: number): Vec3 => [
  a[0] + (b[0] - a[0]) * t,
  a[1] + (b[1] - a[1]) * t,
  a[2] + (b[2] - a[2]) * t,
];

function chain(next: ReadonlyMap<number, number>): number[] {
  const start = next.keys().next().value!;
  const loop = [start];
  for (let at = next.get(start); at !== start; at = next.get(at)) {
    if (at === undefined || loop.length > next.size) throw new RangeError('the cut does not close');
    loop.push(at);
  }
  return loop;
}
