import { cross, dot, type Vec3 } from '../../geometry/vec.ts';
import { areaVector, type Face, type Solid } from '../solids/solid.ts';
import { type CutPlane, overPlane } from './half-space.ts';

/** Name of the faces that a cut makes. */
export const CUT_FACE = 'section';

/**
 * What is left of a solid below a plane, closed by cut faces; undefined when nothing is. A corner that lies on the plane
 * counts as above it, so that every edge is crossed or not and no case is special.
 *
 * Handled: faces that are not convex and have holes; several cut faces. Not handled: a cut face within the hole of another.
 */
export function cutSolid(solid: Solid, plane: CutPlane): Solid | undefined {
  const height = solid.vertices.map((p) => overPlane(plane, p));
  const below = height.map((h) => h < -ON);
  if (below.every(Boolean)) return solid;
  if (!below.some(Boolean)) return undefined;
  const cutter = newCutter(solid, height, below);
  const faces = solid.faces.flatMap((face) => cutFace(face, plane.normal, cutter));
  const vertices = cutter.vertices;
  const caps = closedLoops(cutter.rims);
  return { vertices, faces: [...faces, ...facesOf(vertices, caps, plane.normal, CUT_FACE)] };
}

/** Closer than this to the plane is on it, mm. */
const ON = 1e-7;

interface Cutter {
  readonly vertices: Vec3[];
  readonly below: readonly boolean[];
  /** Index of a kept corner in the new list. */
  readonly corner: (index: number) => number;
  /** Index of the point where an edge crosses the plane. */
  readonly crossing: (a: number, b: number) => number;
  /** The edges of the cut faces, from point to point. */
  readonly rims: Map<number, number>;
}

function newCutter(solid: Solid, height: readonly number[], below: readonly boolean[]): Cutter {
  const vertices: Vec3[] = [];
  const known = new Map<string, number>();
  const add = (key: string, point: () => Vec3): number => {
    const before = known.get(key);
    if (before !== undefined) return before;
    known.set(key, vertices.push(point()) - 1);
    return vertices.length - 1;
  };
  return {
    vertices,
    below,
    rims: new Map(),
    corner: (i) => add(`${i}`, () => solid.vertices[i]!),
    crossing: (a, b) => {
      const [i, j] = a < b ? [a, b] : [b, a];
      return add(`${i}-${j}`, () =>
        between(
          solid.vertices[i]!,
          solid.vertices[j]!,
          Math.min(1, Math.max(0, height[i]! / (height[i]! - height[j]!))),
        ),
      );
    },
  };
}

const between = (p: Vec3, q: Vec3, t: number): Vec3 => [
  p[0] + (q[0] - p[0]) * t,
  p[1] + (q[1] - p[1]) * t,
  p[2] + (q[2] - p[2]) * t,
];

/** The kept stretch of a loop, from the point where it comes below the plane to the one where it leaves. */
type Run = readonly number[];

function cutFace({ loops, normal, surface }: Face, planeNormal: Vec3, cutter: Cutter): Face[] {
  const whole: number[][] = [];
  const runs: Run[] = [];
  for (const loop of loops) {
    const side = loop.map((i) => cutter.below[i]!);
    if (side.every(Boolean)) whole.push(loop.map(cutter.corner));
    else if (side.some(Boolean)) runs.push(...runsOf(loop, side, cutter));
  }
  if (runs.length === 0 && whole.length === 0) return [];
  const next = joints(runs, cross(planeNormal, normal), cutter);
  const cut = runs.length > 0 ? walk(runs, next) : [];
  return facesOf(cutter.vertices, [...cut, ...whole], normal, surface);
}

function runsOf(loop: readonly number[], side: readonly boolean[], cutter: Cutter): Run[] {
  const n = loop.length;
  const runs: Run[] = [];
  for (let k = 0; k < n; k++) {
    if (side[k] || !side[(k + 1) % n]) continue;
    const run = [cutter.crossing(loop[k]!, loop[(k + 1) % n]!)];
    let m = (k + 1) % n;
    for (; side[m]; m = (m + 1) % n) run.push(cutter.corner(loop[m]!));
    run.push(cutter.crossing(loop[(m + n - 1) % n]!, loop[m]!));
    runs.push(run);
  }
  return runs;
}

/**
 * From where a run leaves to where the next one comes in: along the line in which face and plane meet, leaving and coming
 * in take turns. `along` points from a leaving point to its partner.
 */
function joints(runs: readonly Run[], along: Vec3, { vertices, rims }: Cutter): ReadonlyMap<number, number> {
  const at = (index: number): number => dot(along, vertices[index]!);
  const leaving = runs.map((run) => run.at(-1)!).sort((a, b) => at(a) - at(b));
  const coming = runs.map((run) => run[0]!).sort((a, b) => at(a) - at(b));
  return new Map(
    leaving.map((from, k) => {
      const to = coming[k]!;
      if (from !== to) rims.set(to, from);
      return [from, to];
    }),
  );
}

function walk(runs: readonly Run[], next: ReadonlyMap<number, number>): number[][] {
  const byStart = new Map(runs.map((run) => [run[0]!, run]));
  const loops: number[][] = [];
  for (const first of runs) {
    if (!byStart.has(first[0]!)) continue;
    const loop: number[] = [];
    for (let run = byStart.get(first[0]!); run; ) {
      byStart.delete(run[0]!);
      loop.push(...run);
      run = byStart.get(next.get(run.at(-1)!)!);
    }
    loops.push(withoutTwins(loop));
  }
  return loops.filter((loop) => loop.length > 2);
}

const withoutTwins = (loop: readonly number[]): number[] => loop.filter((i, k) => i !== loop[(k + 1) % loop.length]);

/** @throws RangeError when the rims do not close: the solid was open. */
function closedLoops(rims: ReadonlyMap<number, number>): number[][] {
  const left = new Map(rims);
  const loops: number[][] = [];
  for (const start of rims.keys()) {
    if (!left.has(start)) continue;
    const loop: number[] = [];
    for (let at = start; left.has(at); ) {
      loop.push(at);
      const to = left.get(at)!;
      left.delete(at);
      at = to;
    }
    if (rims.get(loop.at(-1)!) !== start) throw new RangeError('a cut through a solid does not close');
    if (loop.length > 2) loops.push(loop);
  }
  return loops;
}

/** Loops in one plane as faces: each outer one with the holes that lie within it. */
function facesOf(vertices: readonly Vec3[], loops: readonly number[][], normal: Vec3, surface: string): Face[] {
  const isOuter = (loop: readonly number[]): boolean => dot(areaVector(vertices, loop), normal) > 0;
  const outer = loops.filter(isOuter);
  const holes = loops.filter((loop) => !isOuter(loop));
  if (outer.length < 2) return outer.map((loop) => ({ normal, surface, loops: [loop, ...holes] }));
  return outer.map((loop) => ({
    normal,
    surface,
    loops: [loop, ...holes.filter((hole) => isWithin(vertices, hole, loop, normal))],
  }));
}

/** Whether a hole lies within an outer loop: the winding of the loop around one corner of the hole. */
function isWithin(vertices: readonly Vec3[], hole: readonly number[], loop: readonly number[], normal: Vec3): boolean {
  const p = vertices[hole[0]!]!;
  let turn = 0;
  loop.forEach((i, k) => {
    const a = minus(vertices[i]!, p);
    const b = minus(vertices[loop[(k + 1) % loop.length]!]!, p);
    turn += Math.atan2(dot(cross(a, b), normal), dot(a, b));
  });
  return Math.abs(turn) > Math.PI;
}

const minus = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
