import { cross, dot, type Vec3 } from '../../geometry/vec.ts';
import { faceTriangles } from './face-triangles.ts';
import type { Solid } from './solid.ts';

/** Volume in mm³ and center of mass in mm of a closed solid of one stuff, in its own frame; exact to rounding. */
export function massCenter(solid: Solid): { readonly volume: number; readonly center: Vec3 } {
  const corners = faceTriangles(solid).corners;
  let six = 0;
  const sum: [number, number, number] = [0, 0, 0];
  for (let t = 0; t < corners.length; t += 3) {
    const a = solid.vertices[corners[t]!]!;
    const b = solid.vertices[corners[t + 1]!]!;
    const c = solid.vertices[corners[t + 2]!]!;
    // The tetrahedron from the origin: its share of the volume, and its own center.
    const part = dot(a, cross(b, c));
    six += part;
    for (const k of [0, 1, 2] as const) sum[k] += (part * (a[k] + b[k] + c[k])) / 4;
  }
  return { volume: six / 6, center: [sum[0] / six, sum[1] / six, sum[2] / six] };
}
