import type { Vec3 } from '../../geometry/vec.ts';
import type { Face, Solid } from './solid.ts';

type Axes = readonly [0 | 1 | 2, 0 | 1 | 2];

const XY: Axes = [0, 1];
const XZ: Axes = [0, 2];
const YZ: Axes = [1, 2];

/** The two axes that stay when a face is drawn flat: all but the one its normal is nearest to. */
export function flatAxes(normal: Vec3): Axes {
  const x = Math.abs(normal[0]);
  const y = Math.abs(normal[1]);
  const z = Math.abs(normal[2]);
  if (z >= x && z >= y) return XY;
  return y >= x ? XZ : YZ;
}

/** Closer than this to the outer loop counts as on it, mm. */
const ON_EDGE = 1e-7;

/** Where a point of a face's plane lies with respect to its outer loop. */
export function insideLoop(solid: Solid, face: Face, p: Vec3): 'inside' | 'outside' | 'on' {
  const [u, v] = flatAxes(face.normal);
  const loop = face.loops[0]!;
  const pu = p[u];
  const pv = p[v];
  let inside = false;
  let a = solid.vertices[loop[loop.length - 1]!]!;
  for (const index of loop) {
    const b = solid.vertices[index]!;
    if (isNear(pu, pv, a[u], a[v], b[u], b[v])) return 'on';
    if (a[v] > pv !== b[v] > pv && pu < ((b[u] - a[u]) * (pv - a[v])) / (b[v] - a[v]) + a[u]) inside = !inside;
    a = b;
  }
  return inside ? 'inside' : 'outside';
}

/** True when the point is closer to the segment than `ON_EDGE`. */
function isNear(px: number, py: number, ax: number, ay: number, bx: number, by: number): boolean {
  const dx = bx - ax;
  const dy = by - ay;
  const ex = px - ax;
  const ey = py - ay;
  const t = Math.min(1, Math.max(0, (ex * dx + ey * dy) / (dx * dx + dy * dy)));
  const rx = ex - t * dx;
  const ry = ey - t * dy;
  return rx * rx + ry * ry < ON_EDGE * ON_EDGE;
}
