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
  const walks = walksOf(solid);
  const edges: Edge[] = [];
  for (let walk = 0; walk < walks.from.length; walk++) {
    const [from, to, left] = [walks.from[walk]!, walks.to[walk]!, walks.face[walk]!];
    const back = find(walks, to, from);
    if (back < 0) throw new RangeError(`an edge of ${solid.faces[left]!.surface} has no face beyond it`);
    if (from < to) edges.push({ from, to, left, right: walks.face[back]! });
  }
  return edges;
}

/** Every step of every loop, in order: a solid has thousands, and a page asks anew at every change. */
interface Walks {
  readonly from: Int32Array;
  readonly to: Int32Array;
  readonly face: Int32Array;
  /** For each vertex the last step that starts there, for each step the one before it from the same vertex; -1 for none. */
  readonly last: Int32Array;
  readonly before: Int32Array;
}

function walksOf({ vertices, faces }: Solid): Walks {
  let count = 0;
  for (const { loops } of faces) for (const loop of loops) count += loop.length;
  const last = new Int32Array(vertices.length).fill(-1);
  const [from, to, face, before] = [0, 0, 0, 0].map(() => new Int32Array(count)) as FourArrays;
  const walks = { from, to, face, last, before };
  let walk = 0;
  for (let f = 0; f < faces.length; f++) {
    for (const loop of faces[f]!.loops) {
      for (let k = 0; k < loop.length; k++) {
        const start = loop[k]!;
        const end = loop[k + 1] ?? loop[0]!;
        if (find(walks, start, end) >= 0) {
          throw new RangeError(`two faces walk the same way along an edge of ${faces[f]!.surface}`);
        }
        from[walk] = start;
        to[walk] = end;
        face[walk] = f;
        before[walk] = last[start]!;
        last[start] = walk;
        walk += 1;
      }
    }
  }
  return walks;
}

type FourArrays = [Int32Array, Int32Array, Int32Array, Int32Array];

/** The step from one vertex to another; -1 when there is none. */
function find({ to, last, before }: Walks, start: number, end: number): number {
  let walk = last[start]!;
  while (walk >= 0 && to[walk] !== end) walk = before[walk]!;
  return walk;
}
