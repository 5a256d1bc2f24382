import type { Assembly } from '../../model/assembly.ts';
import type { Body } from '../../model/body.ts';
import type { Part, PartId } from '../../model/part.ts';
import { type Shape, shapeKey, shapeOf } from './shapes.ts';
import type { MadePanels } from './solid-of.ts';

/** Shapes by part, each made when it is asked for. */
export interface ShapesAsked {
  get(id: PartId): Shape | undefined;
}

/**
 * Shapes of one piece after the other, for a piece that changes a little at a time: what was asked of the last piece and
 * has not changed is taken over from it.
 */
export function shapesAsked(): (assembly: Assembly) => ShapesAsked {
  let last: Kept = EMPTY;
  return (assembly) => {
    const before = last;
    const now: Kept = { byKey: new Map(), byBody: new Map() };
    last = now;
    const panels: MadePanels = new Map();
    const parts = new Map(assembly.parts.map((part) => [part.id, part]));
    const byId = new Map<PartId, Shape>();
    const keyed = (part: Part): Shape => {
      const key = shapeKey(part);
      const shape = now.byKey.get(key) ?? before.byKey.get(key) ?? shapeOf(part, panels);
      now.byKey.set(key, shape);
      return shape;
    };
    const plain = (part: Part): Shape => {
      const shape = now.byBody.get(part.body) ?? keyed(part);
      now.byBody.set(part.body, shape);
      return shape;
    };
    return {
      get(id) {
        const part = parts.get(id);
        if (!part) return undefined;
        const shape = byId.get(id) ?? (part.features.length > 0 ? keyed(part) : plain(part));
        byId.set(id, shape);
        return shape;
      },
    };
  };
}

interface Kept {
  readonly byKey: Map<string, Shape>;
  readonly byBody: Map<Body, Shape>;
}

const EMPTY: Kept = { byKey: new Map(), byBody: new Map() };
