import type { Assembly } from '../../model/assembly.ts';
import type { Part, PartId } from '../../model/part.ts';
import type { Solid } from './solid.ts';
import { type Refusal, solidOf } from './solid-of.ts';
import { type Triangles, triangulate } from './triangulate.ts';

/** The finished shape of one part, in its own frame. Parts of one shape share it. */
export interface Shape {
  readonly solid: Solid;
  readonly triangles: Triangles;
  readonly refused: readonly Refusal[];
}

/** The shape of every part, by id; a shape that several parts have is made once. */
export function shapesOf(assembly: Assembly): Map<PartId, Shape> {
  const made = new Map<string, Shape>();
  return new Map(
    assembly.parts.map((part) => {
      // The strips of a top are never alike; writing out their keys would only cost time.
      const key = part.body.kind === 'slice' ? part.id : shapeKey(part);
      const shape = made.get(key) ?? shapeOf(part);
      made.set(key, shape);
      return [part.id, shape];
    }),
  );
}

function shapeOf(part: Part): Shape {
  const { solid, refused } = solidOf(part);
  return { solid, triangles: triangulate(solid), refused };
}

/** Equal for parts that have the same shape to the last bit. */
export const shapeKey = (part: Part): string => JSON.stringify([part.body, part.features]);
