import type { Vec3 } from '../../geometry/vec.ts';
import { skeletonOf } from '../drawings/skeleton.ts';
import { faceTriangles } from '../solids/face-triangles.ts';
import type { Solid } from '../solids/solid.ts';
import { hashWords } from './hash.ts';
import type { SceneShape } from './scene-data.ts';

/** Surfaces that come into being when a glued panel is thought cut along its glue lines. */
const GLUED = /^(?:joint|layer)\./;

const known = new WeakMap<Solid, KeyedShape>();

interface KeyedShape {
  readonly shape: SceneShape;
  readonly key: string;
}

/** The mesh of a finished solid and its key; made once for each solid. */
export function keyedShape(solid: Solid): KeyedShape {
  const before = known.get(solid);
  if (before) return before;
  const shape = sceneShape(solid);
  const made = { shape, key: shapeKeyOf(shape) };
  known.set(solid, made);
  return made;
}

/** The mesh of a solid, with the lines that are worth drawing: its corners, as the drawings have them. */
export function sceneShape(solid: Solid): SceneShape {
  const numbers = new Map<string, number>();
  const { corners, starts } = faceTriangles(solid);
  const surfaces = new Uint16Array(corners.length / 3);
  solid.faces.forEach(({ surface }, face) => {
    if (!numbers.has(surface)) numbers.set(surface, numbers.size);
    surfaces.fill(numbers.get(surface)!, starts[face]! / 3, starts[face + 1]! / 3);
  });
  const edges: number[] = [];
  const seams: number[] = [];
  const glued = solid.faces.map(({ surface }) => GLUED.test(surface));
  for (const { from, to, left, right } of skeletonOf(solid).creases) {
    (glued[left] || glued[right] ? seams : edges).push(from, to);
  }
  return {
    vertices: flat(solid.vertices),
    triangles: new Uint32Array(corners),
    surfaces,
    edges: new Uint32Array(edges),
    seams: new Uint32Array(seams),
  };
}

function flat(points: readonly Vec3[]): Float32Array {
  const out = new Float32Array(3 * points.length);
  points.forEach(([x, y, z], k) => {
    out[3 * k] = x;
    out[3 * k + 1] = y;
    out[3 * k + 2] = z;
  });
  return out;
}

/** The same for the same bytes, and for no others as far as 64 bits can tell. */
export function shapeKeyOf(shape: SceneShape): string {
  const parts = [new Uint32Array(shape.vertices.buffer), shape.triangles, shape.edges, shape.seams];
  const hash = (start: number): string =>
    parts
      .reduce((sum, words) => hashWords(words, sum), start)
      .toString(16)
      .padStart(8, '0');
  return `${hash(0x811c9dc5)}${hash(0x5bd1e995)}`;
}
