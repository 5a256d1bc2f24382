import type { Solid } from '../solids/solid.ts';
import { triangulateFace } from '../solids/triangulate.ts';
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
  return solid.faces.flatMap((f, face) => {
    const corners: number[] = [];
    triangulateFace(solid.vertices, f, corners);
    return Array.from({ length: corners.length / 3 }, (_, t): Triangle => {
      const [a, b, c] = corners.slice(3 * t, 3 * t + 3);
      return { face, corners: [a!, b!, c!] };
    });
  });
}
