import { type Frame, toInner, toOuter, turnIn } from '../geometry/frame.ts';
import { scale } from '../geometry/vec.ts';
import type { PlacedPart } from '../model/assembly.ts';
import type { Joined } from '../model/composition.ts';
import type { Mortise } from '../model/feature.ts';
import type { Joint } from '../model/joint.ts';
import { looseTenon } from '../parts/loose-tenon.ts';
import type { Mm } from '../units/mm.ts';
import type { SpeciesId } from '../wood/species-id.ts';

/** How the tenons of a joint are sized. */
export interface TenonSize {
  readonly thickness: Mm;
  /** mm, along the mortise. */
  readonly width: Mm;
  /** mm of mortise in each part, from its mouth. */
  readonly depth: Mm;
  /** mm by which each mortise is deeper than the tenon reaches. */
  readonly depthPlay: Mm;
  /** mm by which the mortises of the second part are longer than the tenon at each end; those of the first are tight. */
  readonly endPlay: Mm;
  readonly edges: 'round' | 'square';
}

export interface LooseTenonJointOptions {
  /** "frame-a/post-1-foot": names the joint, its cuts and its tenons. */
  readonly id: string;
  readonly kind: Joint['kind'];
  /** The two parts; the first gets the tight mortises. */
  readonly between: readonly [PlacedPart, PlacedPart];
  /** In the table's frame: origin in the joint at the middle of the tenon, x from the first part into the second, y along the mortise. */
  readonly spots: readonly Frame[];
  readonly tenon: TenonSize;
  readonly wood: SpeciesId;
  /** Mark of the n-th tenon, counted from 0. */
  readonly mark: (n: number) => string;
  /** mm² of the faces that meet. */
  readonly glueArea: number;
  /** Name of the cuts on both parts: "slot", "foot"; the n-th is "slot-3". Default: the last word of the id. */
  readonly cut?: string;
}

/**
 * Two parts that meet face to face with loose tenons between them: one mortise in each part for each tenon, exactly
 * opposite, and the tenon centered in its length.
 *
 * @throws RangeError when a tenon would have no length.
 */
export function looseTenonJoint(options: LooseTenonJointOptions): Joined {
  const { id, kind, between, spots, tenon, wood, mark, glueArea } = options;
  const name = options.cut ?? id.slice(id.lastIndexOf('/') + 1);
  const reach = tenon.depth - tenon.depthPlay;
  if (!(reach > 0)) {
    throw new RangeError(
      `joint ${id}: a mortise ${tenon.depth} mm deep with ${tenon.depthPlay} mm of play leaves no tenon`,
    );
  }
  const featureId = (n: number): string => (spots.length > 1 ? `${name}-${n + 1}` : name);
  const cuts = between.map(({ frame }, side) =>
    spots.map((spot, n): Mortise => {
      const play = side === 0 ? 0 : 2 * tenon.endPlay;
      return {
        kind: 'mortise',
        id: featureId(n),
        at: toInner(frame, spot.origin),
        into: turnIn(frame, scale(spot.x, side === 0 ? -1 : 1)),
        along: turnIn(frame, spot.y),
        length: tenon.width + play,
        width: tenon.thickness,
        depth: tenon.depth,
        ends: tenon.edges,
        play,
      };
    }),
  );
  const size = { length: 2 * reach, width: tenon.width, thickness: tenon.thickness, edges: tenon.edges };
  const model = looseTenon({ id: `${id}/tenon`, mark: 'N', wood, ...size });
  const tenons = spots.map((spot, n) => ({
    // One body for all: whoever draws them sees at once that they are alike.
    part: { ...model, id: spots.length > 1 ? `${model.id}-${n + 1}` : model.id, mark: mark(n) },
    frame: { ...spot, origin: toOuter(spot, [-reach, -tenon.width / 2, -tenon.thickness / 2]) },
  }));
  const [first, second] = between;
  return {
    joint: {
      id,
      kind,
      sides: [
        { part: first.part.id, features: spots.map((_, n) => featureId(n)) },
        { part: second.part.id, features: spots.map((_, n) => featureId(n)) },
      ],
      tenons: tenons.map((t) => t.part.id),
      glueArea,
    },
    cuts: new Map([
      [first.part.id, cuts[0]!],
      [second.part.id, cuts[1]!],
    ]),
    tenons,
  };
}

/** A joint of two faces without tenons: edge to edge, layer on layer, pad under foot. */
export function plainJoint(
  id: string,
  kind: Joint['kind'],
  between: readonly [PlacedPart, PlacedPart],
  glueArea: number,
): Joined {
  const side = ({ part }: PlacedPart): Joint['sides'][0] => ({ part: part.id, features: [] });
  return {
    joint: { id, kind, sides: [side(between[0]), side(between[1])], tenons: [], glueArea },
    cuts: new Map(),
    tenons: [],
  };
}
