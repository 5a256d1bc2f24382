import makerjs from 'makerjs';
import { arcOfBulge, type Outline, type OutlinePoint, outlineArea } from '../../geometry/outline.ts';
import { parallelOutline } from './parallel-outline.ts';

/** Pointed outside corners: the saw runs straight on past a corner. */
const POINTED = 1;

/** makerjs rounds end points to 1e-7 mm. */
const ROUNDED = 1e-6;

/** An outline as makerjs holds it: one path a segment. */
function model(outline: Outline): MakerJs.IModel {
  const paths: Record<string, MakerJs.IPath> = {};
  outline.forEach((a, i) => {
    const b = outline[(i + 1) % outline.length]!;
    if (!a.bulge) {
      paths[`segment-${i}`] = new makerjs.paths.Line([a.x, a.y], [b.x, b.y]);
      return;
    }
    const { cx, cy, radius, start, span } = arcOfBulge(a, b);
    const [from, to] = span > 0 ? [start, start + span] : [start + span, start];
    paths[`segment-${i}`] = new makerjs.paths.Arc([cx, cy], radius, degrees(from), degrees(to));
  });
  return { paths };
}

const degrees = (radians: number): number => ((((radians * 180) / Math.PI) % 360) + 360) % 360;

/**
 * The outline `distance` mm outside another, counter-clockwise; its points are exact to 1e-6 mm.
 *
 * @throws RangeError when the offset does not close into one outline.
 */
export const outsideOf = (outline: Outline, distance: number): OutlinePoint[] => {
  const moved = parallelOutline(outline, distance);
  return moved ? withoutStraightPoints(moved) : outsideByModel(outline, distance);
};

/** The same for any outline, by makerjs: a hundred times as long. */
export function outsideByModel(outline: Outline, distance: number): OutlinePoint[] {
  const chain = makerjs.model.findSingleChain(makerjs.model.outline(model(outline), distance, POINTED));
  if (!chain?.endless) throw new RangeError(`the line ${distance} mm outside the outline does not close`);
  const walked = chain.links.map((link): OutlinePoint => {
    const path = link.walkedPath.pathContext;
    // End points already stand in the order of the walk.
    const { 0: x = 0, 1: y = 0 } = link.endPoints[0] ?? {};
    if (path.type !== 'arc') return { x, y };
    const bulge = Math.tan((makerjs.angle.ofArcSpan(path as MakerJs.IPathArc) * Math.PI) / 720);
    return { x, y, bulge: link.reversed ? -bulge : bulge };
  });
  return withoutStraightPoints(outlineArea(walked) < 0 ? reversed(walked) : walked);
}

const reversed = (outline: readonly OutlinePoint[]): OutlinePoint[] =>
  outline.map((_, i) => {
    const at = outline[outline.length - 1 - i]!;
    const before = outline[(2 * outline.length - 2 - i) % outline.length]!;
    return { x: at.x, y: at.y, ...(before.bulge ? { bulge: -before.bulge } : {}) };
  });

const withoutStraightPoints = (outline: readonly OutlinePoint[]): OutlinePoint[] =>
  outline.filter((p, i) => {
    const a = outline[(i + outline.length - 1) % outline.length]!;
    const b = outline[(i + 1) % outline.length]!;
    if (a.bulge || p.bulge) return true;
    const turn = (p.x - a.x) * (b.y - p.y) - (p.y - a.y) * (b.x - p.x);
    return Math.abs(turn) > ROUNDED * Math.hypot(b.x - a.x, b.y - a.y);
  });
