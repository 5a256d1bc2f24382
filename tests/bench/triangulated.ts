import type { Vec3 } from '../../lib/geometry/vec.ts';

export interface Triangulated {
  readonly vertices: readonly Vec3[];
  readonly triangles: readonly number[];
}

/** Vertices closer than this are one, mm: kernels that hand out loose triangles are welded before they are judged. */
const WELD = 1e-5;

/** Edges that are not in exactly two triangles, once each way. */
export function openEdgeCount({ vertices, triangles }: Triangulated): number {
  const ids = new Map<string, number>();
  const id = (k: number): number => {
    const key = vertices[k]!.map((c) => Math.round(c / WELD)).join(',');
    const known = ids.get(key) ?? ids.size;
    ids.set(key, known);
    return known;
  };
  const edges = new Map<string, number>();
  for (let t = 0; t < triangles.length; t += 3) {
    for (const [a, b] of [
      [t, t + 1],
      [t + 1, t + 2],
      [t + 2, t],
    ] as const) {
      const [i, j] = [id(triangles[a]!), id(triangles[b]!)];
      const [key, way] = i < j ? [`${i} ${j}`, 1] : [`${j} ${i}`, -1];
      edges.set(key, (edges.get(key) ?? 0) + way);
    }
  }
  return [...edges.values()].filter((n) => n !== 0).length;
}
