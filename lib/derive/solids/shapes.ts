import type { Assembly } from '../../model/assembly.ts';
import type { Body } from '../../model/body.ts';
import type { Part, PartId } from '../../model/part.ts';
import { faceTriangles } from './face-triangles.ts';
import type { Solid } from './solid.ts';
import { type MadePanels, type Refusal, solidOf } from './solid-of.ts';
import type { Triangles } from './triangulate.ts';

/** The finished shape of one part, in its own frame. Parts of one shape share it. */
export interface Shape {
  readonly solid: Solid;
  /** Made when they are asked for. */
  readonly triangles: Triangles;
  readonly refused: readonly Refusal[];
}

/** The shape of every part, by id; a shape that several parts have is made once. */
export function shapesOf(assembly: Assembly): Map<PartId, Shape> {
  const byBody = new Map<Body, Shape>();
  const byKey = new Map<string, Shape>();
  const panels: MadePanels = new Map();
  const known = (part: Part): Shape => {
    const key = shapeKey(part);
    const shape = byKey.get(key) ?? shapeOf(part, panels);
    byKey.set(key, shape);
    return shape;
  };
  return new Map(
    assembly.parts.map((part) => {
      // The strips of a top are never alike, and the tenons of a joint share their body: no need to write out keys.
      if (part.body.kind === 'slice') return [part.id, shapeOf(part, panels)];
      if (part.features.length > 0) return [part.id, known(part)];
      const shape = byBody.get(part.body) ?? known(part);
      byBody.set(part.body, shape);
      return [part.id, shape];
    }),
  );
}

/** The shape of one part. */
export function shapeOf(part: Part, panels?: MadePanels): Shape {
  const { solid, refused } = solidOf(part, panels);
  return {
    solid,
    get triangles() {
      return faceTriangles(solid).corners;
    },
    refused,
  };
}

/** Equal for parts that have the same shape to the last bit. */
export function shapeKey({ body, features }: Part): string {
  if (body.kind !== 'slice') return JSON.stringify([body, features]);
  // All slices of a panel have it and its profiles in common: long, and written out once.
  const { of, profiles, ...own } = body;
  return `${JSON.stringify([own, features])}${textOf(of)}${textOf(profiles)}`;
}

const texts = new WeakMap<object, string>();

function textOf(value: object): string {
  const text = texts.get(value) ?? JSON.stringify(value);
  texts.set(value, text);
  return text;
}
