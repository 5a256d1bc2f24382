import type { Vec3 } from '../../geometry/vec.ts';
import type { Mm } from '../../units/mm.ts';
import { background } from './background.ts';
import { coversOf } from './cover.ts';
import { type CoverGrid, coverGrid } from './cover-grid.ts';
import { type FeatureEdge, featureEdges } from './feature-edge.ts';
import type { Interval } from './interval.ts';
import { joinCollinear, type Piece } from './join-collinear.ts';
import type { PlacedSolid } from './placed-solid.ts';
import { type Projection, project } from './projection.ts';
import { stretches } from './stretches.ts';
import type { View } from './view.ts';
import type { ViewLine } from './view-line.ts';

export interface HiddenLinesOptions {
  /** Whether lines behind wood are wanted; default yes. */
  readonly hidden?: boolean;
  /**
   * Rounds up to this wide, straight across, are drawn by one line along their middle, where the arris was; wider ones
   * only by their outline. Default 12; 0 for no such lines.
   */
  readonly arris?: Mm;
}

/** The round-overs of tops, and no more: at the scale of a whole piece their two borders would be one line. Our convention. */
const ARRIS: Mm = 12;

/**
 * The lines of a view: every edge of the solids cut where it passes behind a face, without sampling.
 *
 * Parts that cannot be seen and whose hidden lines are not wanted (tenons in their mortises) are best left out. Handled:
 * closed solids that touch or stand apart. Not handled: solids that cross each other; the line where they meet is not
 * an edge of either and is not drawn.
 */
export function hiddenLines(solids: readonly PlacedSolid[], view: View, options: HiddenLinesOptions = {}): ViewLine[] {
  return linesOf(
    solids.map((s) => project(s, view)),
    options,
  );
}

/** The same from solids that already stand in view coordinates. */
export function linesOf(
  projections: readonly Projection[],
  { hidden = true, arris = ARRIS }: HiddenLinesOptions,
): ViewLine[] {
  const grid = coverGrid(projections.flatMap(coversOf));
  const pieces: Piece[] = [];
  projections.forEach((of, solid) => {
    for (const edge of featureEdges(of, solid, arris)) {
      if (hidden || !edge.behind) putPieces(edge, of.part, grid, hidden, pieces);
    }
  });
  return joinCollinear(pieces).sort(inOrder);
}

/** Appends what is seen of an edge and, when wanted, what is not. */
function putPieces(edge: FeatureEdge, part: Piece['part'], grid: CoverGrid, hidden: boolean, pieces: Piece[]): void {
  const put = ([t0, t1]: Interval, kind: Piece['kind'], outline: boolean): void => {
    pieces.push({ from: pointOn(edge, t0), to: pointOn(edge, t1), kind, part, outline });
  };
  const found = stretches(edge, grid);
  for (const stretch of found.visible) {
    if (!edge.contour) put(stretch, 'visible', false);
    else
      for (const beyond of background(edge, stretch, grid)) put(beyond.stretch, 'visible', beyond.solid !== edge.solid);
  }
  if (hidden) for (const stretch of found.hidden) put(stretch, 'hidden', false);
}

function pointOn({ from, to }: FeatureEdge, t: number): Vec3 {
  if (t === 0) return from;
  if (t === 1) return to;
  return [from[0] + (to[0] - from[0]) * t, from[1] + (to[1] - from[1]) * t, from[2] + (to[2] - from[2]) * t];
}

/** Hidden before visible and narrow before wide, so that what matters is drawn last; then by part and place. */
function inOrder(a: ViewLine, b: ViewLine): number {
  if (a.kind !== b.kind) return a.kind === 'hidden' ? -1 : 1;
  if (a.outline !== b.outline) return a.outline ? 1 : -1;
  if (a.part !== b.part) return a.part < b.part ? -1 : 1;
  return a.from[0] - b.from[0] || a.from[1] - b.from[1] || a.to[0] - b.to[0] || a.to[1] - b.to[1];
}
