import { dot, reach, type Vec3 } from '../../geometry/vec.ts';

/** A flat face: loop 0 counter-clockwise seen from outside, holes clockwise; indices into the vertices of the solid. */
export interface Face {
  readonly normal: Vec3;
  readonly loops: number[][];
  /** Name of the surface the facet belongs to; facets of one curved surface share it: "slot-2.wall". */
  readonly surface: string;
}

/** A closed solid of flat faces. Faces that meet use the same vertex indices; nothing is ever welded. */
export interface Solid {
  readonly vertices: Vec3[];
  readonly faces: Face[];
}

/** Twice the area vector of a loop (Newell); its direction is the normal of a counter-clockwise loop. */
export function areaVector(vertices: readonly Vec3[], loop: readonly number[]): Vec3 {
  let x = 0;
  let y = 0;
  let z = 0;
  let p = vertices[loop[loop.length - 1]!]!;
  for (const index of loop) {
    const q = vertices[index]!;
    x += (p[1] - q[1]) * (p[2] + q[2]);
    y += (p[2] - q[2]) * (p[0] + q[0]);
    z += (p[0] - q[0]) * (p[1] + q[1]);
    p = q;
  }
  return [x, y, z];
}

/** A face from its outer loop, with the normal taken from the loop. */
export function face(vertices: readonly Vec3[], surface: string, loop: number[]): Face {
  const [x, y, z] = areaVector(vertices, loop);
  const size = Math.sqrt(x * x + y * y + z * z);
  if (!(size > 0)) throw new RangeError(`face ${surface} has no area`);
  return { normal: [x / size, y / size, z / size], loops: [loop], surface };
}

/** Volume in mm³ from the loops; exact to rounding, positive when the faces look outward. */
export function volumeOf(solid: Solid): number {
  let six = 0;
  for (const { loops } of solid.faces) {
    const origin = solid.vertices[loops[0]![0]!]!;
    for (const loop of loops) six += dot(areaVector(solid.vertices, loop), origin);
  }
  return six / 6;
}

/** Surface of the solid in mm². */
export function areaOf(solid: Solid): number {
  let twice = 0;
  for (const { loops, normal } of solid.faces) {
    for (const loop of loops) twice += dot(areaVector(solid.vertices, loop), normal);
  }
  return twice / 2;
}

/** Signed distance of a point from the plane of a face, mm, positive outside. */
export const aboveFace = (solid: Solid, of: Face, p: Vec3): number =>
  reach(p, solid.vertices[of.loops[0]![0]!]!, of.normal);

export interface Bounds {
  readonly min: Vec3;
  readonly max: Vec3;
}

/** The box around some points, mm. */
export function boundsOf(points: readonly Vec3[]): Bounds {
  const min: [number, number, number] = [Infinity, Infinity, Infinity];
  const max: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  for (const p of points) {
    for (const k of [0, 1, 2] as const) {
      if (p[k] < min[k]) min[k] = p[k];
      if (p[k] > max[k]) max[k] = p[k];
    }
  }
  return { min, max };
}

/** Edges whose two sides do not meet exactly once each way; empty for a closed solid. */
export function openEdges(solid: Solid): string[] {
  const count = new Map<string, number>();
  for (const { loops } of solid.faces) {
    for (const loop of loops) {
      loop.forEach((i, k) => {
        const j = loop[(k + 1) % loop.length]!;
        const [key, way] = i < j ? [`${i}-${j}`, 1] : [`${j}-${i}`, -1];
        const seen = count.get(key);
        if (seen === undefined) count.set(key, way);
        else if (seen + way === 0) count.delete(key);
        else count.set(key, Number.NaN);
      });
    }
  }
  return [...count.keys()];
}
