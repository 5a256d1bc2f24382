import { toOuter, turnIn } from '../../geometry/frame.ts';
import { dot, type Vec2 } from '../../geometry/vec.ts';
import type { PartId } from '../../model/part.ts';
import { CUT_FACE, cutSolid } from './cut-solid.ts';
import type { CutPlane } from './half-space.ts';
import { hiddenLines } from './hidden-lines.ts';
import type { PlacedSolid } from './placed-solid.ts';
import { toView, type View } from './view.ts';
import type { ViewLine } from './view-line.ts';

/** Where one part is cut: borders and holes, mm in view coordinates; filled by the even-odd rule. */
export interface CutFace {
  readonly part: PartId;
  readonly loops: readonly (readonly Vec2[])[];
}

export interface SectionView {
  readonly cuts: readonly CutFace[];
  /** What is seen on the cut and beyond it. */
  readonly lines: readonly ViewLine[];
}

/** The solids cut square to the view, `at` mm toward the viewer from the origin of the table's frame, and all that lies beyond. */
export function sectionView(solids: readonly PlacedSolid[], view: View, at: number): SectionView {
  const kept = solids.flatMap((placed) => cutPlaced(placed, { normal: view.toward, offset: at }));
  return { cuts: kept.flatMap((placed) => cutFaces(placed, view)), lines: hiddenLines(kept, view, { hidden: false }) };
}

/** A placed solid below a plane of the table's frame; none when nothing of it is left. */
export function cutPlaced({ part, solid, frame }: PlacedSolid, { normal, offset }: CutPlane): PlacedSolid[] {
  const inside = { normal: turnIn(frame, normal), offset: offset - dot(normal, frame.origin) };
  const left = cutSolid(solid, inside);
  return left ? [{ part, solid: left, frame }] : [];
}

/** The cut faces of a placed solid in a view; several pieces of one part are one. */
export function cutFaces({ part, solid, frame }: PlacedSolid, view: View): CutFace[] {
  const loops = solid.faces
    .filter(({ surface }) => surface === CUT_FACE)
    .flatMap((face) => face.loops)
    .map((loop) =>
      loop.map((i): Vec2 => {
        const [x, y] = toView(view, toOuter(frame, solid.vertices[i]!));
        return [x, y];
      }),
    );
  return loops.length > 0 ? [{ part, loops }] : [];
}
