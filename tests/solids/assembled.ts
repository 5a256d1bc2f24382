import { tenonPairs } from '../../lib/derive/solids/interference.ts';
import { shapesOf } from '../../lib/derive/solids/shapes.ts';
import { boundsOf } from '../../lib/derive/solids/solid.ts';
import { type Frame, toOuter } from '../../lib/geometry/frame.ts';
import { type Assembly, pieces, placeOf } from '../../lib/model/assembly.ts';
import { isPocket } from '../../lib/model/feature.ts';
import { isGlueUp, type PartId } from '../../lib/model/part.ts';
import { cutterOf } from './boolean-of.ts';
import { type Body, exactly, intersect, placed, release, subtract } from './kernel.ts';

/** Two pieces and the room, mm³, that both of them take up. */
export interface Overlap {
  readonly a: PartId;
  readonly b: PartId;
  readonly volume: number;
}

export interface Looked {
  /** Pairs whose boxes meet, and of these those of a tenon and a piece it is let into. */
  readonly pairs: number;
  readonly tenons: number;
  readonly overlaps: readonly Overlap[];
  /** The greatest volume of all, mm³. */
  readonly most: number;
}

/** Boxes this far apart or less are near, mm. */
const NEAR = 0.01;

/** What manifold-3d finds of pieces within pieces, pockets cut: every near pair, tenons in their mortises included. */
export function overlapsOf(assembly: Assembly, least = 1e-3): Looked {
  const shapes = shapesOf(assembly);
  const cuts = cutAfterGluing(assembly);
  const all = pieces(assembly).map((part) => {
    const frame = placeOf(assembly, part.id);
    const { solid, triangles } = shapes.get(part.id)!;
    const vertices = solid.vertices.map((p) => toOuter(frame, p));
    let body: Body | undefined;
    const made = (): Body => {
      body ??= subtract(exactly(vertices, triangles), cuts.get(part.id) ?? []);
      return body;
    };
    return { id: part.id, box: boundsOf(vertices), body: made };
  });
  const housed = new Set(tenonPairs(assembly).map((pair) => [...pair].sort().join(' ')));
  const found: Overlap[] = [];
  let [pairs, tenons, most] = [0, 0, 0];
  all.forEach((a, i) => {
    for (const b of all.slice(i + 1)) {
      const apart = ([0, 1, 2] as const).some(
        (k) => a.box.min[k] > b.box.max[k] + NEAR || b.box.min[k] > a.box.max[k] + NEAR,
      );
      if (apart) continue;
      pairs += 1;
      if (housed.has([a.id, b.id].sort().join(' '))) tenons += 1;
      const volume = intersect(a.body(), b.body()).volume();
      most = Math.max(most, volume);
      if (!(volume < least)) found.push({ a: a.id, b: b.id, volume });
    }
  });
  release();
  return { pairs, tenons, overlaps: found, most };
}

/** Cutters for the pockets of glued parts, where they stand: they go into the members, which do not know of them. */
function cutAfterGluing(assembly: Assembly): Map<PartId, Body[]> {
  const glued = assembly.parts.filter(isGlueUp);
  return new Map(
    glued.flatMap((whole) => {
      const frame = placeOf(assembly, whole.id);
      const cutters = whole.features.filter(isPocket).map((pocket) => placed(cutterOf(pocket), frame));
      return whole.members.map((id): [PartId, Body[]] => [id, cutters]);
    }),
  );
}

/** The assembly with one piece moved: a fault to plant. */
export const withMoved = (assembly: Assembly, id: PartId, move: (frame: Frame) => Frame): Assembly => ({
  ...assembly,
  places: assembly.places.map((place) => (place.part === id ? { ...place, frame: move(place.frame) } : place)),
});
