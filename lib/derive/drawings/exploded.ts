import { toOuter } from '../../geometry/frame.ts';
import { add, type Vec3 } from '../../geometry/vec.ts';
import { type Assembly, partOf, placeOf, visibleParts } from '../../model/assembly.ts';
import { isEdgeProfile, isPocket } from '../../model/feature.ts';
import type { JointSide } from '../../model/joint.ts';
import type { Part, PartId } from '../../model/part.ts';
import type { Mm } from '../../units/mm.ts';
import { placedBounds } from '../solids/placed-bounds.ts';
import type { Shape } from '../solids/shapes.ts';
import type { Solid } from '../solids/solid.ts';
import { blankOf } from '../solids/solid-of.ts';
import { apart } from './apart.ts';
import type { PlacedSolid } from './placed-solid.ts';
import { pullsOf } from './pulls.ts';

/** A piece of furniture with its joints opened; mm of the table's frame. */
export interface Exploded {
  /** Sorted by part; loose tenons half-way between their two pieces. */
  readonly solids: readonly PlacedSolid[];
  /** From the mouth of each slot to the mouth of the slot that it belongs to. */
  readonly axes: readonly (readonly [Vec3, Vec3])[];
}

/**
 * The pieces of an assembly with all joints opened along their own directions. Glued panels stay whole; tenons inside them
 * are left out.
 *
 * @param lift mm that what is screwed on stands off.
 */
export function exploded(assembly: Assembly, shapes: ReadonlyMap<PartId, Shape>, lift: Mm): Exploded {
  const ids = visibleParts(assembly).flatMap(({ id, kind }) => (kind === 'looseTenon' ? [] : [id]));
  const boxes = new Map(ids.map((id) => [id, placedBounds(placeOf(assembly, id), shapes.get(id)!.solid.vertices)]));
  const pulls = pullsOf(assembly, boxes, lift);
  const moved = apart(ids, pulls);
  const shown = [...new Set([...ids, ...pulls.flatMap(({ tenons }) => tenons)])].sort();
  return {
    solids: shown.map((id) => {
      const frame = placeOf(assembly, id);
      const solid = solidOf(partOf(assembly, id), shapes);
      return { part: id, solid, frame: { ...frame, origin: add(frame.origin, moved.get(id)!) } };
    }),
    axes: assembly.joints
      .filter(({ sides, tenons }) => tenons.length > 0 && sides.every(({ part }) => boxes.has(part)))
      .flatMap(({ sides: [a, b] }) => {
        const far = mouths(assembly, b, moved);
        return mouths(assembly, a, moved).map((mouth, k) => [mouth, far[k]!] as const);
      }),
  };
}

/** A glued top without the pockets that it hides. */
const solidOf = (part: Part, shapes: ReadonlyMap<PartId, Shape>): Solid =>
  part.kind === 'top'
    ? blankOf({ ...part, features: part.features.filter(isEdgeProfile) })
    : shapes.get(part.id)!.solid;

/** Where the pockets of one side of a joint open, in the order of the joint. */
const mouths = (assembly: Assembly, { part: id, features }: JointSide, moved: ReadonlyMap<PartId, Vec3>): Vec3[] => {
  const pockets = partOf(assembly, id).features.filter(isPocket);
  return features.map((name) => {
    const pocket = pockets.find((one) => one.id === name);
    if (!pocket) throw new RangeError(`part ${id} has no pocket ${name}`);
    return add(toOuter(placeOf(assembly, id), pocket.at), moved.get(id)!);
  });
};
