import { cross, dot, length, sub, unit, type Vec3 } from '../../geometry/vec.ts';
import type { Mm } from '../../units/mm.ts';
import type { Solid } from '../solids/solid.ts';
import type { Edge } from './edge.ts';

/** The line that a narrow round is drawn by: the middle one of its facet edges, where the arris was. */
interface Arris {
  readonly edge: Edge;
  /** The face it starts from, its facets, the face it ends at. */
  readonly faces: readonly number[];
  /** Straight across the round. */
  readonly width: Mm;
}

export interface Rounds {
  /** Edges where two surfaces meet in a corner, and true corners of a surface that goes round in one name. */
  readonly creases: ReadonlySet<Edge>;
  readonly arrises: readonly Arris[];
}

/** A turn below this is none, radians. */
const FLAT = 1e-7;

/** No curved surface is faceted so coarsely: a turn of 60 degrees within one is a true corner (a square mortise). */
const SHARP = Math.PI / 3;

/** The first facet of a round turns from the flat by half of what the facets turn from each other; some room for rounding. */
const SMOOTH = 0.75;

/** Cosine of the turn over a whole round up to which it has an arris: 120 degrees. A half round has none. */
const WIDEST = -0.5;

/**
 * Tells the corners of a solid from its rounds. An angle alone could not: the ridge of a tapered underside is flatter
 * than the facets of a round-over. Two facets of one surface make no corner, nor does a line where a curved surface runs
 * out smoothly into a flat.
 */
export function roundsOf(solid: Solid, edges: readonly Edge[]): Rounds {
  const between: Edge[] = [];
  const corners: Edge[] = [];
  for (const edge of edges) {
    const turned = turnAt(solid, edge);
    if (turned <= FLAT) continue;
    const isOneSurface = solid.faces[edge.left]!.surface === solid.faces[edge.right]!.surface;
    (isOneSurface && turned < SHARP ? between : corners).push(edge);
  }
  const beside = (list: ReadonlyMap<number, readonly Edge[]>, edge: Edge, face: number): Edge | undefined =>
    list.get(face)?.find((e) => e !== edge && isParallel(solid, e, edge));

  const facets = byFace(between);
  const runsOut = (edge: Edge, face: number): boolean => {
    const facet = beside(facets, edge, face);
    return facet !== undefined && turnAt(solid, edge) < SMOOTH * turnAt(solid, facet);
  };
  const isSmooth = (edge: Edge): boolean => runsOut(edge, edge.left) || runsOut(edge, edge.right);
  const smooth = new Set(corners.filter(isSmooth));
  const joins = byFace([...smooth]);

  /** From a smooth join across the facets of a round to its other join. */
  const across = (start: Edge, first: number): Path | undefined => {
    const path = { edges: [start], faces: [beyond(start, first), first] };
    for (let face = first, at = start; path.edges.length <= edges.length; ) {
      const end = at === start ? undefined : beside(joins, at, face);
      const step = end ?? beside(facets, at, face);
      if (!step) return undefined;
      face = beyond(step, face);
      at = step;
      path.edges.push(step);
      path.faces.push(face);
      if (end) return path;
    }
    return undefined;
  };
  const findArrises = (): readonly Arris[] => {
    const paths = [...smooth]
      .flatMap((e) => [across(e, e.left), across(e, e.right)])
      .filter((path) => path !== undefined);
    // Each round is crossed from both its joins; one way is enough.
    return paths.filter(({ faces }) => faces.at(1)! < faces.at(-2)!).flatMap((path) => arrisOf(solid, path));
  };
  let arrises: readonly Arris[] | undefined;
  return {
    creases: new Set(corners.filter((e) => !smooth.has(e))),
    get arrises() {
      arrises ??= findArrises();
      return arrises;
    },
  };
}

interface Path {
  readonly edges: Edge[];
  readonly faces: number[];
}

const beyond = (edge: Edge, face: number): number => (edge.left === face ? edge.right : edge.left);

function byFace(edges: readonly Edge[]): Map<number, Edge[]> {
  const lists = new Map<number, Edge[]>();
  for (const edge of edges) {
    for (const face of [edge.left, edge.right]) {
      const list = lists.get(face);
      if (list) list.push(edge);
      else lists.set(face, [edge]);
    }
  }
  return lists;
}

function turnAt({ faces }: Solid, { left, right }: Edge): number {
  const n = faces[left]!.normal;
  const m = faces[right]!.normal;
  const x = n[1] * m[2] - n[2] * m[1];
  const y = n[2] * m[0] - n[0] * m[2];
  const z = n[0] * m[1] - n[1] * m[0];
  return Math.atan2(Math.sqrt(x * x + y * y + z * z), dot(n, m));
}

const along = ({ vertices }: Solid, { from, to }: Edge): Vec3 => unit(sub(vertices[to]!, vertices[from]!));

/** Asked for every pair of edges of a face, so without a vector in between. */
function isParallel({ vertices }: Solid, a: Edge, b: Edge): boolean {
  const [p, q, r, s] = [vertices[a.from]!, vertices[a.to]!, vertices[b.from]!, vertices[b.to]!];
  const ux = q[0] - p[0];
  const uy = q[1] - p[1];
  const uz = q[2] - p[2];
  const vx = s[0] - r[0];
  const vy = s[1] - r[1];
  const vz = s[2] - r[2];
  const x = uy * vz - uz * vy;
  const y = uz * vx - ux * vz;
  const z = ux * vy - uy * vx;
  return x * x + y * y + z * z < PARALLEL * PARALLEL * (ux * ux + uy * uy + uz * uz) * (vx * vx + vy * vy + vz * vz);
}

/** Sine of the angle below which two edges are parallel. */
const PARALLEL = 1e-4;

function arrisOf(solid: Solid, { edges, faces }: Path): Arris[] {
  const [first, last] = [solid.faces[faces[0]!]!, solid.faces[faces.at(-1)!]!];
  if (dot(first.normal, last.normal) < WIDEST) return [];
  const [start, end] = [edges[0]!, edges.at(-1)!];
  const over = sub(solid.vertices[end.from]!, solid.vertices[start.from]!);
  const width = length(cross(along(solid, start), over));
  return [{ edge: edges[Math.floor(edges.length / 2)]!, faces, width }];
}
