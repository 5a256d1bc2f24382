import type { Frame } from '../geometry/frame.ts';
import { type Assembly, assemble, type Climate, type PlacedPart, type Supplies } from './assembly.ts';
import type { Feature } from './feature.ts';
import type { Fixing, Joint } from './joint.ts';
import type { Part, PartId } from './part.ts';

/** What a joint function answers: the cuts on both parts, the tenons between them, and the record of the joint. */
export interface Joined {
  readonly joint: Joint;
  /** By part id: features to add, in the order of making. */
  readonly cuts: ReadonlyMap<PartId, readonly Feature[]>;
  readonly tenons: readonly PlacedPart[];
}

/** What a fixing function answers. */
export interface Fixed {
  readonly fixing: Fixing;
  readonly cuts: ReadonlyMap<PartId, readonly Feature[]>;
}

/** A piece while it is being put together. Parts go in whole and are never changed; `done` answers pure data. */
export interface Composition {
  /** Puts a part in its place; answers the same for use in a joint. */
  place(part: Part, frame: Frame): PlacedPart;
  join(joined: Joined): void;
  fix(fixed: Fixed): void;
  done(terms?: { readonly supplies?: Partial<Supplies>; readonly climate?: Partial<Climate> }): Assembly;
}

/**
 * Starts a piece.
 *
 * @throws RangeError when the same part is placed twice, or a joint or fixing cuts a part that is not placed.
 */
export function composition(title: string): Composition {
  const placed = new Map<PartId, PlacedPart>();
  const joints: Joint[] = [];
  const fixings: Fixing[] = [];
  const place = (part: Part, frame: Frame): PlacedPart => {
    if (placed.has(part.id)) throw new RangeError(`part "${part.id}" is placed twice`);
    const both = { part, frame };
    placed.set(part.id, both);
    return both;
  };
  const cut = (cuts: ReadonlyMap<PartId, readonly Feature[]>, by: string): void => {
    for (const [id, features] of cuts) {
      const known = placed.get(id);
      if (!known) throw new RangeError(`${by} cuts part "${id}", which is not placed`);
      placed.set(id, { ...known, part: { ...known.part, features: [...known.part.features, ...features] } });
    }
  };
  return {
    place,
    join(joined) {
      cut(joined.cuts, `joint ${joined.joint.id}`);
      for (const tenon of joined.tenons) place(tenon.part, tenon.frame);
      joints.push(joined.joint);
    },
    fix(fixed) {
      cut(fixed.cuts, `fixing ${fixed.fixing.id}`);
      fixings.push(fixed.fixing);
    },
    done: (terms = {}) => assemble({ title, placed: [...placed.values()], joints, fixings, ...terms }),
  };
}
