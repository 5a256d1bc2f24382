import { toOuter, turnOut } from '../../geometry/frame.ts';
import { hullOf } from '../../geometry/hull.ts';
import { dot, unit, type Vec2, type Vec3 } from '../../geometry/vec.ts';
import type { PartId } from '../../model/part.ts';
import { type Deg, radians } from '../../units/mm.ts';
import { type Cover, coversOf } from './cover.ts';
import { linesOf } from './hidden-lines.ts';
import { type Patch, paintingOrder } from './painting-order.ts';
import type { PlacedSolid } from './placed-solid.ts';
import { type Projection, project } from './projection.ts';
import { toView, type View, viewFrom } from './view.ts';
import type { ViewLine } from './view-line.ts';

/** A flat area of one tone. */
export interface Fill {
  readonly part: PartId;
  /** Outer border and holes, mm in view coordinates; filled by the even-odd rule. */
  readonly loops: readonly (readonly Vec2[])[];
  /** Of the wood, from 0 (in the shade) to 1 (in the light). */
  readonly tone: number;
}

/** A piece of furniture to look at: what to put on paper, in this order. Everything is mm in view coordinates. */
export interface Picture {
  /** What stands over each part's place on the floor. */
  readonly shadow: readonly (readonly Vec2[])[];
  /** The faces from back to front. Empty when no right order was found. */
  readonly fills: readonly Fill[];
  /** Visible lines only. */
  readonly lines: readonly ViewLine[];
}

/** The viewer of a picture: degrees to the right of the front, and above the floor. */
export const PICTURE_VIEW: View = lookingFrom(32, 27);

export function lookingFrom(turned: Deg, above: Deg): View {
  const [turn, rise] = [radians(turned), radians(above)];
  return viewFrom([Math.sin(turn) * Math.cos(rise), -Math.cos(turn) * Math.cos(rise), Math.sin(rise)]);
}

/** The light comes from above, from the left of the front. */
const LIGHT: Vec3 = unit([-0.35, -0.6, 0.9]);

/**
 * The whole piece as one sees it standing on the floor: visible lines, faces in the tone of their direction, and a
 * shadow straight below. Leave out parts that lie inside others.
 */
export function pictureOf(solids: readonly PlacedSolid[], view: View = PICTURE_VIEW): Picture {
  const projections = solids.map((s) => project(s, view));
  return {
    shadow: solids.map((s) => shadowOf(s, view)).filter((hull) => hull.length > 2),
    fills: fillsOf(solids, projections),
    lines: linesOf(projections, { hidden: false }),
  };
}

function shadowOf({ solid, frame }: PlacedSolid, view: View): Vec2[] {
  return hullOf(
    solid.vertices.map((p): Vec2 => {
      const [x, y] = toOuter(frame, p);
      const [right, up] = toView(view, [x, y, 0]);
      return [right, up];
    }),
  );
}

/** Faces seen under a smaller sine than this would be thinner than any line. */
const GRAZING = 1e-4;

function fillsOf(solids: readonly PlacedSolid[], projections: readonly Projection[]): Fill[] {
  const patches = projections.flatMap((of, solid) => {
    const byFace = new Map<number, Cover[]>();
    for (const cover of coversOf(of, solid)) {
      if (cover.normal[2] < GRAZING) continue;
      const face = byFace.get(cover.face);
      if (face) face.push(cover);
      else byFace.set(cover.face, [cover]);
    }
    return [...byFace.values()].map((covers): Patch => ({ covers }));
  });
  const whole = new Set(patches);
  return (paintingOrder(patches) ?? []).map((patch): Fill => {
    const { solid, face, corners } = patch.covers[0]!;
    const of = projections[solid]!;
    const { loops, normal } = of.solid.faces[face]!;
    const borders = whole.has(patch) ? loops.map((loop) => loop.map((i) => of.points[i]!)) : [corners];
    return {
      part: of.part,
      loops: borders.map((border) => border.map(([x, y]): Vec2 => [x, y])),
      tone: toneOf(turnOut(solids[solid]!.frame, normal)),
    };
  });
}

/** How light a face is: half from all around, half from the light. */
const toneOf = (normal: Vec3): number => Math.min(1, Math.max(0, (1 + dot(normal, LIGHT)) / 2));
