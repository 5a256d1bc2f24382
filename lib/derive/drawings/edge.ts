import type { Solid } from '../solids/solid.ts';

/** An edge of a solid: vertex indices, and the two faces that meet there by their place in the list of faces. */
export interface Edge {
  readonly from: number;
  readonly to: number;
  /** The face whose loop walks from `from` to `to`; seen from outside it lies to the left. */
  readonly left: number;
  readonly right: number;
}

/** Every edge once. @throws RangeError when an edge lacks a face on one side. */
export function edgesOf(solid: Solid): Edge[] {
  const count = solid.vertices.length;
  const faceAlong = new Map<number, number>();
  solid.faces.forEach(({ loops, surface }, face) => {
    for (const loop of loops) {
      loop.forEach((from, k) => {
        const key = from * count + loop[(k + 1) % loop.length]!;
        if (faceAlong.has(key)) throw new RangeError(`two faces walk the same way along an edge of ${surface}`);
        faceAlong.set(key, face);
      });
    }
  });
  const edges: Edge[] = [];
  for (const [key, left] of faceAlong) {
    const to = key % count;
    const from = (key - to) / count;
    const right = faceAlong.get(to * count + from);
    if (right === undefined) throw new RangeError(`an edge of ${solid.faces[left]!.surface} has no face beyond it`);
    if (from < to) edges.push({ from, to, left, right });
  }
  return edges;
}
