import { along, dot, reach, type Vec3 } from '../../geometry/vec.ts';
import { bite } from './bite.ts';
import { insideLoop } from './inside.ts';
import type { Mouth } from './mouth.ts';
import type { Face, Solid } from './solid.ts';

/**
 * Opens the skin at a face for a ring of points, slid along the direction `n` onto it. The ring runs clockwise seen from
 * outside. A ring across one edge of the face opens both faces there.
 *
 * @returns undefined when the ring runs over the border of the face otherwise.
 */
export function openMouth(solid: Solid, host: Face, ring: readonly Vec3[], n: Vec3): Mouth | undefined {
  const slide = (f: Face, p: Vec3): Vec3 => {
    const origin = solid.vertices[f.loops[0]![0]!]!;
    return along(p, n, -reach(p, origin, f.normal) / dot(f.normal, n));
  };
  const flat = ring.map((p) => slide(host, p));
  if (!flat.every((p) => insideLoop(solid, host, p) === 'inside')) return bite(solid, host, ring, n, slide);
  const points = flat.map((p) => {
    solid.vertices.push(p);
    return solid.vertices.length - 1;
  });
  host.loops.push(points);
  return { points, crossings: new Map() };
}
