import type { ProjectionAngle } from '../../../drawing/sheet.ts';
import { toOuter } from '../../../geometry/frame.ts';
import type { Assembly } from '../../../model/assembly.ts';
import { type Bounds, boundsOf } from '../../solids/solid.ts';
import { hiddenLines } from '../hidden-lines.ts';
import { endView } from '../orthographic.ts';
import { PICTURE_VIEW } from '../picture.ts';
import type { PlacedSolid } from '../placed-solid.ts';
import { type SectionView, sectionView } from '../section-view.ts';
import { standingSolids } from '../standing-solids.ts';
import { VIEWS } from '../view.ts';
import type { ViewLine } from '../view-line.ts';

/** The views of a whole piece, in true mm; they depend on no scale. */
export interface PieceViews {
  readonly solids: readonly PlacedSolid[];
  /** Around the whole piece and around what stands on the floor, table's frame. */
  readonly box: Bounds;
  readonly stand: Bounds;
  readonly plan: readonly ViewLine[];
  readonly front: readonly ViewLine[];
  readonly end: readonly ViewLine[];
  readonly section: SectionView;
  /** As one sees it from above, over a corner. */
  readonly picture: readonly ViewLine[];
  /** Where along the table the section is taken, mm. */
  readonly cutAt: number;
}

/** A piece that comes this close to the floor stands on it, mm: glides and pads lie lower still (our convention). */
const FLOOR = 25;

export function pieceViews(assembly: Assembly, angle: ProjectionAngle): PieceViews {
  const solids = standingSolids(assembly);
  const boxes = solids.map(({ solid, frame }) => boundsOf(solid.vertices.map((p) => toOuter(frame, p))));
  const box = around(boxes);
  const stand = around(boxes.filter(({ min }) => min[2] < box.min[2] + FLOOR));
  const view = endView(angle);
  const cutAt = (box.min[0] + box.max[0]) / 2;
  const top = assembly.parts.find(({ body }) => body.kind === 'panel')?.id;
  return {
    solids,
    box,
    stand,
    // Of what the top hides only the base is of use.
    plan: hiddenLines(solids, VIEWS.plan).filter(({ kind, part }) => kind === 'visible' || part !== top),
    front: hiddenLines(solids, VIEWS.front, { hidden: false }),
    end: hiddenLines(solids, view, { hidden: false }),
    section: sectionView(solids, view, view.toward[0] * cutAt),
    picture: hiddenLines(solids, PICTURE_VIEW, { hidden: false }),
    cutAt,
  };
}

const around = (boxes: readonly Bounds[]): Bounds => boundsOf(boxes.flatMap(({ min, max }) => [min, max]));
