import { faceTriangles } from '../solids/face-triangles.ts';
import type { Solid } from '../solids/solid.ts';
import { type Edge, edgesOf } from './edge.ts';
import { type Rounds, roundsOf } from './rounds.ts';

/** A piece of a face. */
interface Triangle {
  readonly face: number;
  /** Vertex indices, counter-clockwise seen from outside. */
  readonly corners: readonly [number, number, number];
}

/** What a view needs to know of a solid, whichever way one looks. */
export interface Skeleton extends Rounds {
  readonly edges: readonly Edge[];
  readonly triangles: readonly Triangle[];
}

const known = new WeakMap<Solid, { vertices: number; faces: number; skeleton: Skeleton }>();

/** The skeleton of a closed solid. Views of one solid share it; a pocket cut in between makes it new. */
export function skeletonOf(solid: Solid): Skeleton {
  const before = known.get(solid);
  if (before?.vertices === solid.vertices.length && before.faces === solid.faces.length) return before.skeleton;
  const edges = edgesOf(solid);
  const rounds = roundsOf(solid, edges);
  let triangles: readonly Triangle[] | undefined;
  const skeleton: Skeleton = {
    edges,
    creases: rounds.creases,
    get arrises() {
      return rounds.arrises;
    },
    get triangles() {
      triangles ??= trianglesOf(solid);
      return triangles;
    },
  };
  known.set(solid, { vertices: solid.vertices.length, faces: solid.faces.length, skeleton });
  return skeleton;
}

function trianglesOf(solid: Solid): Triangle[] {
  const { corners, starts } = faceTriangles(solid);
  const found: Triangle[] = [];
  for (let face = 0; face < solid.faces.length; face++) {
    for (let at = starts[face]!; at < starts[face + 1]!; at += 3) {
      found.push({ face, corners: [corners[at]!, corners[at + 1]!, corners[at + 2]!] });
    }
  }
  return found;
}
