/** A point of a mesh, mm. */
export type Point = readonly [number, number, number];
export type Triangle = readonly [Point, Point, Point];

const HEADER = 80;
const TRIANGLE = 50;

/** A binary STL file as its triangles: 80 bytes of header, a count, and per triangle a normal, three corners, two bytes. */
export function readStl(bytes: Uint8Array): readonly Triangle[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const count = view.getUint32(HEADER, true);
  if (bytes.byteLength !== HEADER + 4 + count * TRIANGLE)
    throw new Error(`the file is not as long as ${count} triangles`);
  const point = (at: number): Point => [0, 4, 8].map((k) => view.getFloat32(at + k, true)) as unknown as Point;
  return Array.from({ length: count }, (_, k) => {
    const at = HEADER + 4 + k * TRIANGLE + 12;
    return [point(at), point(at + 12), point(at + 24)] as const;
  });
}

const sub = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const cross = (a: Point, b: Point): Point => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const dot = (a: Point, b: Point): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/** mm³, by the divergence theorem. */
export const meshVolume = (mesh: readonly Triangle[]): number =>
  mesh.reduce((sum, [a, b, c]) => sum + dot(a, cross(b, c)) / 6, 0);

/** mm². */
export const meshArea = (mesh: readonly Triangle[]): number =>
  mesh.reduce((sum, [a, b, c]) => sum + Math.hypot(...cross(sub(b, a), sub(c, a))) / 2, 0);

/** Least and greatest coordinate along each axis, mm. */
export function meshBounds(mesh: readonly Triangle[]): { readonly min: Point; readonly max: Point } {
  const axis = (k: 0 | 1 | 2): readonly [number, number] => {
    let [low, high] = [Infinity, -Infinity];
    for (const p of mesh.flat()) {
      low = Math.min(low, p[k]);
      high = Math.max(high, p[k]);
    }
    return [low, high];
  };
  const [x, y, z] = [axis(0), axis(1), axis(2)];
  return { min: [x[0], y[0], z[0]], max: [x[1], y[1], z[1]] };
}

/** Surfaces nearer to each other than this are one, mm: the writer draws corners to a grid of about 0.01 mm. */
const ONE = 0.02;

/** Heights at which an upright line through x and y passes the surface, from below upwards, each once. */
export function heightsAt(mesh: readonly Triangle[], x: number, y: number): readonly number[] {
  const found = mesh.flatMap(([a, b, c]): number[] => {
    const det = (b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1]);
    if (Math.abs(det) < 1e-9) return [];
    const u = ((x - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (y - a[1])) / det;
    const v = ((b[0] - a[0]) * (y - a[1]) - (x - a[0]) * (b[1] - a[1])) / det;
    return u < -1e-9 || v < -1e-9 || u + v > 1 + 1e-9 ? [] : [a[2] + u * (b[2] - a[2]) + v * (c[2] - a[2])];
  });
  return found.sort((p, q) => p - q).filter((z, i, all) => i === 0 || z - all[i - 1]! > ONE);
}
