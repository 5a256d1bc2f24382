import type { PlacedSolid } from '../../lib/derive/drawings/placed-solid.ts';
import { toView, type View } from '../../lib/derive/drawings/view.ts';
import type { ViewLine } from '../../lib/derive/drawings/view-line.ts';
import { toOuter, turnOut } from '../../lib/geometry/frame.ts';
import { add, cross, dot, length, scale, sub, type Vec2, type Vec3 } from '../../lib/geometry/vec.ts';
import { rayCaster } from './ray-caster.ts';

/** One point of an edge in space, and what a ray from it to the viewer says. */
interface Sample {
  readonly edge: SceneEdge;
  readonly on: Vec2;
  readonly visible: boolean;
}

export interface SceneEdge {
  readonly part: string;
  readonly ends: readonly [Vec3, Vec3];
  readonly flat: readonly [Vec2, Vec2];
  readonly contour: boolean;
  /** Worth a line: turns out of sight, or parts two surfaces otherwise than where a round runs out into a flat. */
  readonly drawn: boolean;
}

export interface Verdict {
  /** Sample points looked at. */
  readonly looked: number;
  /** What does not agree, in words. */
  readonly wrong: string[];
  /** Disagreements at points that lie on an outline in projection, where either answer is right. */
  readonly onOutline: number;
}

/** Points nearer to a line than this lie on it, mm. */
const ON = 0.01;

/** Where along an edge it is looked at: odd places, so that no sample falls on a corner by symmetry. */
const PLACES = [0.03, 0.17, 0.31, 0.46, 0.59, 0.73, 0.88, 0.971];

/** Compares the lines of a view with rays cast from points along every edge, both ways. */
export function compare(solids: readonly PlacedSolid[], view: View, lines: readonly ViewLine[]): Verdict {
  const edges = sceneEdges(solids, view);
  const cast = rayCaster(solids);
  const samples = edges.flatMap((edge) =>
    PLACES.map((t): Sample => {
      const p = add(scale(edge.ends[0], 1 - t), scale(edge.ends[1], t));
      return { edge, on: flat(view, p), visible: cast(p, view.toward) === undefined };
    }),
  );
  const contours = edges.filter((edge) => edge.contour);
  const isOnOutline = (p: Vec2, own: SceneEdge): boolean =>
    contours.some((edge) => edge !== own && distance(edge.flat, p) < ON);
  const drawnAt = (p: Vec2, kind: ViewLine['kind']): boolean =>
    lines.some((l) => l.kind === kind && distance([l.from, l.to], p) < ON);

  const wrong: string[] = [];
  let onOutline = 0;
  const judge = (right: boolean, grazes: boolean, words: string): void => {
    if (right) return;
    if (grazes) onOutline++;
    else wrong.push(words);
  };
  for (const { edge, on, visible } of samples.filter((s) => s.edge.drawn)) {
    const right = drawnAt(on, 'visible') || (!visible && drawnAt(on, 'hidden'));
    judge(right, isOnOutline(on, edge), `${edge.part}: no ${visible ? 'visible' : 'hidden'} line at ${on.join(', ')}`);
  }
  const places = lines.flatMap((line) => PLACES.map((t) => ({ line, on: between(line.from, line.to, t) })));
  for (const { line, on } of places) {
    const here = edges.filter((edge) => distance(edge.flat, on) < ON);
    const worthy = line.kind === 'visible' ? here : here.filter((edge) => edge.drawn);
    const seen = worthy.some((edge) => cast(under(edge, on), view.toward) === undefined);
    const grazes = here.length > 1 && here.some((edge) => edge.contour);
    const right = seen === (line.kind === 'visible') && here.length > 0;
    judge(right, grazes, `${line.part}: the ${line.kind} line at ${on.join(', ')} is not`);
  }
  return { looked: samples.length + places.length, wrong, onOutline };
}

const between = (a: Vec2, b: Vec2, t: number): Vec2 => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];

/** How far to either side of a line one looks for the parts there, mm. */
const BESIDE = 0.01;

/**
 * Lines whose word on being an outline does not fit what rays from the viewer meet on their two sides. Left out are
 * places that lie on another line as well, where a side is no side: at crossings, and where two lines nearly run together.
 */
export function compareOutlines(solids: readonly PlacedSolid[], view: View, lines: readonly ViewLine[]): string[] {
  const cast = rayCaster(solids);
  const partAt = ([x, y]: Vec2): string | undefined =>
    cast(add(add(scale(view.right, x), scale(view.up, y)), scale(view.toward, 1e4)), scale(view.toward, -1))?.part;
  const visible = lines.filter((line) => line.kind === 'visible');
  return visible.flatMap((line) => {
    const { from, to, part, outline } = line;
    const [u, v] = [to[0] - from[0], to[1] - from[1]];
    const step = BESIDE / Math.hypot(u, v);
    const wrong = PLACES.map((t) => between(from, to, t))
      .filter((p) => !visible.some((other) => other !== line && distance([other.from, other.to], p) < 2 * BESIDE))
      .filter(([x, y]) => {
        const differs = partAt([x - v * step, y + u * step]) !== partAt([x + v * step, y - u * step]);
        return differs !== outline;
      });
    return wrong.map((p) => `${part}: the line at ${p.join(', ')} is${outline ? '' : ' not'} called an outline`);
  });
}

/** The point of an edge in space over a point of its projection. */
function under({ ends, flat: [a, b] }: SceneEdge, [x, y]: Vec2): Vec3 {
  const [u, v] = [b[0] - a[0], b[1] - a[1]];
  const t = Math.min(1, Math.max(0, ((x - a[0]) * u + (y - a[1]) * v) / (u * u + v * v || 1)));
  return add(scale(ends[0], 1 - t), scale(ends[1], t));
}

function flat(view: View, p: Vec3): Vec2 {
  const [x, y] = toView(view, p);
  return [x, y];
}

const isCurved = (surface: string): boolean => /^(profile|round|arch)/.test(surface);

export function sceneEdges(solids: readonly PlacedSolid[], view: View): SceneEdge[] {
  const found: SceneEdge[] = [];
  for (const { part, solid, frame } of solids) {
    const points = solid.vertices.map((p) => toOuter(frame, p));
    const faceOf = new Map(
      solid.faces.flatMap((f) =>
        f.loops.flatMap((l) => l.map((i, k) => [`${i}-${l[(k + 1) % l.length]!}`, f] as const)),
      ),
    );
    for (const [key, f] of faceOf) {
      const [i, j] = key.split('-').map(Number) as [number, number];
      if (i > j) continue;
      const g = faceOf.get(`${j}-${i}`)!;
      const front = [f, g].map((face) => dot(turnOut(frame, face.normal), view.toward) > 1e-9);
      const turn = Math.atan2(length(cross(f.normal, g.normal)), dot(f.normal, g.normal));
      const contour = front[0] !== front[1];
      const runsOut = isCurved(f.surface) !== isCurved(g.surface) && turn < 0.45;
      const corner = f.surface !== g.surface && turn > 1e-6 && !runsOut;
      const ends = [points[i]!, points[j]!] as const;
      found.push({ part, ends, flat: [flat(view, ends[0]), flat(view, ends[1])], contour, drawn: contour || corner });
    }
  }
  // Edges seen end-on are points on paper.
  return found.filter(({ ends }) => length(cross(sub(ends[1], ends[0]), view.toward)) > 1e-6);
}

export function distance([a, b]: readonly [Vec2, Vec2], p: Vec2): number {
  const [u, v] = [b[0] - a[0], b[1] - a[1]];
  const t = Math.min(1, Math.max(0, ((p[0] - a[0]) * u + (p[1] - a[1]) * v) / (u * u + v * v || 1)));
  return Math.hypot(p[0] - a[0] - t * u, p[1] - a[1] - t * v);
}
