import { type Plane, planeHeight, type Surface } from '../../geometry/surface.ts';
import type { Vec2 } from '../../geometry/vec.ts';

/** A convex plan polygon parted by the creases of a surface; points that neighbours share are the same index. */
export interface DividedPlan {
  readonly points: Vec2[];
  /** One for each plane that is met, counter-clockwise. */
  readonly regions: { readonly plane: string; readonly loop: number[] }[];
  /** For each edge of the polygon: its start corner, the crease points along it, its end corner. */
  readonly edges: number[][];
  /** For each edge: the plane over each stretch between those points. */
  readonly edgePlanes: string[][];
}

interface Corner {
  readonly at: Vec2;
  /** What lines meet here: a corner, an edge and a crease, or two creases. Equal keys are the same point. */
  readonly key: string;
  /** The line from here to the next corner, and which edge of the polygon it is part of, if any. */
  readonly line: string;
  readonly edge?: number;
}

/** Points closer than this to a crease count as lying on it, mm. */
const ON = 1e-9;

/** Parts a counter-clockwise convex polygon into the regions over which each plane makes the surface. */
export function dividePlan(polygon: readonly Vec2[], surface: Surface): DividedPlan {
  const points: Vec2[] = [];
  const index = new Map<string, number>();
  const indexOf = (corner: Corner): number => {
    const known = index.get(corner.key);
    if (known !== undefined) return known;
    index.set(corner.key, points.length);
    points.push(corner.at);
    return points.length - 1;
  };
  const start = polygon.map((at, i): Corner => ({ at, key: `corner ${i}`, line: `edge ${i}`, edge: i }));
  start.forEach(indexOf);
  const onEdge = polygon.map(() => new Map<number, string>());
  const regions: { plane: string; loop: number[] }[] = [];
  surface.planes.forEach((plane, i) => {
    let region = start;
    surface.planes.forEach((other, j) => {
      if (i !== j)
        region = keepWhereMade(region, plane, other, surface, i < j ? `crease ${i}|${j}` : `crease ${j}|${i}`);
    });
    if (region.length < 3) return;
    const loop = region.map(indexOf);
    regions.push({ plane: plane.name, loop });
    region.forEach((corner, k) => {
      if (corner.edge !== undefined) onEdge[corner.edge]!.set(loop[k]!, plane.name);
    });
  });
  const edges: number[][] = [];
  const edgePlanes: string[][] = [];
  polygon.forEach((from, e) => {
    const along = (p: number): number => Math.hypot(points[p]![0] - from[0], points[p]![1] - from[1]);
    const starts = [...onEdge[e]!.keys()].sort((a, b) => along(a) - along(b));
    edges.push([...starts, (e + 1) % polygon.length]);
    edgePlanes.push(starts.map((p) => onEdge[e]!.get(p)!));
  });
  return { points, regions, edges, edgePlanes };
}

/** The part of a polygon over which `plane` beats `other`. */
function keepWhereMade(polygon: Corner[], plane: Plane, other: Plane, surface: Surface, crease: string): Corner[] {
  const sign = surface.take === 'highest' ? 1 : -1;
  const excess = polygon.map(({ at }) => {
    const d = sign * (planeHeight(plane, at[0], at[1]) - planeHeight(other, at[0], at[1]));
    return Math.abs(d) < ON ? 0 : d;
  });
  if (excess.every((d) => d >= 0)) return polygon;
  if (excess.every((d) => d <= 0)) return [];
  const kept: Corner[] = [];
  polygon.forEach((corner, k) => {
    const next = (k + 1) % polygon.length;
    const here = excess[k]!;
    const there = excess[next]!;
    if (here > 0) kept.push(corner);
    if (here === 0) kept.push(there >= 0 ? corner : { at: corner.at, key: corner.key, line: crease });
    if (here * there < 0) {
      const t = here / (here - there);
      const a = corner.at;
      const b = polygon[next]!.at;
      const at: Vec2 = [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];
      const key = [corner.line, crease].sort().join(' x ');
      kept.push(here > 0 ? { at, key, line: crease } : { ...corner, at, key });
    }
  });
  return kept;
}
