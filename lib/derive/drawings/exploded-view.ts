import type { Vec2, Vec3 } from '../../geometry/vec.ts';
import { type Assembly, partOf } from '../../model/assembly.ts';
import type { PartId } from '../../model/part.ts';
import type { Mm } from '../../units/mm.ts';
import type { Shape } from '../solids/shapes.ts';
import { type Exploded, exploded } from './exploded.ts';
import { cellAt, clearOf, type SeenCells, seenCells, seenShares } from './exploded-cells.ts';
import { linesOf } from './hidden-lines.ts';
import type { PlacedSolid } from './placed-solid.ts';
import { type Projection, project } from './projection.ts';
import { toView, VIEWS, type View, viewFrom } from './view.ts';
import type { ViewLine } from './view-line.ts';

/** An exploded view; mm in view coordinates, edges along the three axes of the table in their true length. */
export interface ExplodedView {
  readonly view: View;
  readonly lines: readonly ViewLine[];
  /** What is seen of the ways on which the tenons go. */
  readonly axes: readonly (readonly [Vec2, Vec2])[];
  readonly cells: SeenCells;
  /** How far each cell is from the next that shows another face, mm. */
  readonly clear: Float64Array;
  /** The pieces where they went, table's frame; a number in the cells is a place in this list. */
  readonly solids: readonly PlacedSolid[];
}

/** An isometric view shortens all three axes alike; drawn larger by this, they can be measured. */
export const UNSHORTENED = Math.sqrt(3 / 2);

/** What is screwed on is lifted by the first of these that lets one see this share of every piece, or by the best; mm, ours. */
const LIFTS: readonly Mm[] = [300, 450, 600, 800];
const ENOUGH = 0.3;

/** Less of a piece than this may be nothing in finer cells; our convention. */
const HARDLY = 0.05;

/** Over the corner of front and far end, or of front and reference end when a piece is hardly seen from there. */
const CORNERS: readonly View[] = [VIEWS.isometric, viewFrom([-1, -1, 1])];

/** Cells over a view: to choose a lift, and to find places for balloons; our convention. */
const COARSE = 150;
const FINE = 360;

export function explodedView(assembly: Assembly, shapes: ReadonlyMap<PartId, Shape>): ExplodedView {
  const { view, opened, projections } = bestLift(assembly, shapes);
  const found = seenCells(projections, FINE);
  const wide = ([x, y]: Vec2 | Vec3): Vec2 => [x * UNSHORTENED, y * UNSHORTENED];
  const cells: SeenCells = { ...found, size: found.size * UNSHORTENED, origin: wide(found.origin) };
  return {
    view,
    lines: linesOf(projections, { hidden: false }).map((line) => ({
      ...line,
      from: wide(line.from),
      to: wide(line.to),
    })),
    axes: opened.axes.flatMap((axis) => seenOf(axis, view, found).map(([a, b]) => [wide(a), wide(b)] as const)),
    cells,
    clear: clearOf(cells),
    solids: opened.solids,
  };
}

interface Lifted {
  readonly view: View;
  readonly opened: Exploded;
  readonly projections: readonly Projection[];
  /** Of the piece that is seen least. */
  readonly share: number;
}

function bestLift(assembly: Assembly, shapes: ReadonlyMap<PartId, Shape>): Lifted {
  let best: Lifted | undefined;
  for (const view of CORNERS) {
    for (const lift of LIFTS) {
      const found = lifted(assembly, shapes, view, lift);
      if (!best || found.share > best.share) best = found;
      if (found.share === ENOUGH) return found;
    }
    if (best!.share > HARDLY) break;
  }
  return best!;
}

function lifted(assembly: Assembly, shapes: ReadonlyMap<PartId, Shape>, view: View, lift: Mm): Lifted {
  const opened = exploded(assembly, shapes, lift);
  const projections = opened.solids.map((solid) => project(solid, view));
  const shares = seenShares(seenCells(projections, COARSE));
  const wanted = shares.filter((_, k) => partOf(assembly, projections[k]!.part).kind !== 'looseTenon');
  return { view, opened, projections, share: Math.min(ENOUGH, ...wanted) };
}

/** What is in front of a line by less than so many cells does not hide it; our convention. */
const NEAR = 1.5;

/** The stretches of a line that no piece hides, as fine as the cells. */
function seenOf([from, to]: readonly [Vec3, Vec3], view: View, cells: SeenCells): [Vec3, Vec3][] {
  const [a, b] = [toView(view, from), toView(view, to)];
  const count = Math.max(1, Math.round(Math.hypot(b[0] - a[0], b[1] - a[1]) / cells.size));
  const at = (k: number): Vec3 => [0, 1, 2].map((axis) => a[axis]! + ((b[axis]! - a[axis]!) * k) / count) as never;
  const runs: [Vec3, Vec3][] = [];
  let start: number | undefined;
  for (let k = 0; k <= count + 1; k++) {
    const p = at(k);
    const seen = k <= count && p[2] >= cells.depth[cellAt(cells, p)]! - NEAR * cells.size;
    if (seen) start ??= k;
    else if (start !== undefined) {
      if (k - 1 > start) runs.push([at(start), at(k - 1)]);
      start = undefined;
    }
  }
  return runs;
}
