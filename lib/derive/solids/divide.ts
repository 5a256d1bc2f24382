import { heightAt, type Plane, planeHeight, type Surface } from '../../geometry/surface.ts';
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
  /** What meets here: a corner, an edge and planes, or planes alone. Equal keys are the same point. */
  readonly key: string;
  /** Which edge of the polygon the line from here to the next corner is part of, if any; otherwise it is a crease. */
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
  const start = polygon.map((at, i): Corner => ({ at, key: `corner ${i}`, edge: i }));
  start.forEach(indexOf);
  const onEdge = polygon.map(() => new Map<number, string>());
  const regions: { plane: string; loop: number[] }[] = [];
  surface.planes.forEach((plane, i) => {
    let region = start;
    surface.planes.forEach((other, j) => {
      if (i !== j) region = keepWhereMade(region, plane, other, surface, i < j);
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

/** A crease point is named by the edge it lies on, if any, and all the planes that meet there: two, three or more. */
function nameOf(edge: number | undefined, at: Vec2, surface: Surface): string {
  const height = heightAt(surface, at[0], at[1]);
  const meeting = surface.planes.flatMap((p, i) => (Math.abs(planeHeight(p, at[0], at[1]) - height) < ON ? [i] : []));
  return `${edge === undefined ? 'inside' : `edge ${edge}`} ${meeting.join('|')}`;
}

/** The part of a polygon over which `plane` beats `other`; of two that are the same there, the first does. */
function keepWhereMade(polygon: Corner[], plane: Plane, other: Plane, surface: Surface, first: boolean): Corner[] {
  const sign = surface.take === 'highest' ? 1 : -1;
  const excess = polygon.map(({ at }) => {
    const d = sign * (planeHeight(plane, at[0], at[1]) - planeHeight(other, at[0], at[1]));
    return Math.abs(d) < ON ? 0 : d;
  });
  if (excess.every((d) => d === 0)) return first ? polygon : [];
  if (excess.every((d) => d >= 0)) return polygon;
  if (excess.every((d) => d <= 0)) return [];
  const kept: Corner[] = [];
  polygon.forEach((corner, k) => {
    const next = (k + 1) % polygon.length;
    const here = excess[k]!;
    const there = excess[next]!;
    if (here > 0) kept.push(corner);
    if (here === 0) kept.push(there >= 0 ? corner : { at: corner.at, key: corner.key });
    if (here * there < 0) {
      const t = here / (here - there);
      const a = corner.at;
      const b = polygon[next]!.at;
      const at: Vec2 = [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];
      const key = nameOf(corner.edge, at, surface);
      kept.push(here > 0 ? { at, key } : { ...corner, at, key });
    }
  });
  return kept;
}
