import type { SceneShape } from './scene-data.ts';

/** Cosine of the turn up to which facets of one surface are one curve: 60 degrees. A square mortise has true corners. */
const CURVED = 0.5;

/**
 * A normal for every corner of every triangle, nine numbers a triangle: curved surfaces are smooth, all others flat. What
 * is one curve is told by the surface a facet belongs to, never by an angle alone.
 */
export function cornerNormals({ vertices, triangles, surfaces }: Omit<SceneShape, 'edges' | 'seams'>): Float32Array {
  const count = surfaces.length;
  const areas = new Float64Array(3 * count);
  for (let t = 0; t < count; t++) areaVector(vertices, triangles, t, areas);
  const sizes = new Float64Array(count);
  for (let t = 0; t < count; t++) sizes[t] = sizeAt(areas, t);
  const facets: Facets = { areas, sizes, surfaces, around: trianglesAround(vertices.length / 3, triangles) };
  const normals = new Float32Array(9 * count);
  for (let t = 0; t < count; t++) {
    for (let k = 0; k < 3; k++) sumInto(normals, 9 * t + 3 * k, facets, t, triangles[3 * t + k]!);
  }
  return normals;
}

/** The triangles at each vertex: those of vertex v stand in `list` from `start[v]` to `start[v + 1]`. */
interface Around {
  readonly start: Uint32Array;
  readonly list: Uint32Array;
}

function trianglesAround(vertices: number, triangles: Uint32Array): Around {
  const start = new Uint32Array(vertices + 1);
  for (let c = 0; c < triangles.length; c++) start[triangles[c]! + 1]! += 1;
  for (let v = 0; v < vertices; v++) start[v + 1]! += start[v]!;
  const next = start.slice();
  const list = new Uint32Array(triangles.length);
  for (let c = 0, t = 0; c < triangles.length; c += 3, t++) {
    for (let k = 0; k < 3; k++) {
      const v = triangles[c + k]!;
      list[next[v]!] = t;
      next[v]! += 1;
    }
  }
  return { start, list };
}

interface Facets {
  /** Twice the area of each triangle along its normal, three numbers a triangle. */
  readonly areas: Float64Array;
  readonly sizes: Float64Array;
  readonly surfaces: Uint16Array;
  readonly around: Around;
}

/** Twice the area of a triangle along its normal. */
function areaVector(vertices: Float32Array, triangles: Uint32Array, t: number, out: Float64Array): void {
  const a = 3 * triangles[3 * t]!;
  const b = 3 * triangles[3 * t + 1]!;
  const c = 3 * triangles[3 * t + 2]!;
  const ux = vertices[b]! - vertices[a]!;
  const uy = vertices[b + 1]! - vertices[a + 1]!;
  const uz = vertices[b + 2]! - vertices[a + 2]!;
  const vx = vertices[c]! - vertices[a]!;
  const vy = vertices[c + 1]! - vertices[a + 1]!;
  const vz = vertices[c + 2]! - vertices[a + 2]!;
  out[3 * t] = uy * vz - uz * vy;
  out[3 * t + 1] = uz * vx - ux * vz;
  out[3 * t + 2] = ux * vy - uy * vx;
}

/** Writes the mean direction of the facets that go on smoothly from triangle `t` at one of its corners, the wider ones counting more. */
function sumInto(out: Float32Array, at: number, facets: Facets, t: number, vertex: number): void {
  const { areas, sizes, surfaces, around } = facets;
  const px = areas[3 * t]!;
  const py = areas[3 * t + 1]!;
  const pz = areas[3 * t + 2]!;
  const wanted = CURVED * sizes[t]!;
  let x = 0;
  let y = 0;
  let z = 0;
  for (let k = around.start[vertex]!; k < around.start[vertex + 1]!; k++) {
    const n = around.list[k]!;
    if (surfaces[n] !== surfaces[t]) continue;
    const qx = areas[3 * n]!;
    const qy = areas[3 * n + 1]!;
    const qz = areas[3 * n + 2]!;
    if (qx * px + qy * py + qz * pz < wanted * sizes[n]!) continue;
    x += qx;
    y += qy;
    z += qz;
  }
  const size = Math.sqrt(x * x + y * y + z * z) || 1;
  out[at] = x / size;
  out[at + 1] = y / size;
  out[at + 2] = z / size;
}

function sizeAt(areas: Float64Array, t: number): number {
  const x = areas[3 * t]!;
  const y = areas[3 * t + 1]!;
  const z = areas[3 * t + 2]!;
  return Math.sqrt(x * x + y * y + z * z);
}
