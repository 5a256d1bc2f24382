import { along, dot, reach, type Vec3 } from '../../geometry/vec.ts';
import type { Pocket } from '../../model/feature.ts';
import { insideLoop } from './inside.ts';
import type { Mouth } from './mouth.ts';
import { openMouth } from './open-mouth.ts';
import { pocketSection } from './pocket-section.ts';
import { aboveFace, type Face, face, type Solid } from './solid.ts';

/** How far a mouth may lie off the face it is said to be on, mm. */
const ON_FACE = 1e-6;

/**
 * Takes a pocket out of a solid, in place: an opening in the skin, walls, and a floor or a second opening at the far side.
 *
 * Handled: mortises, bores and slots whose mouth and exit lie on one face or across one edge. Not noticed: pockets that
 * cross each other or break through a wall; the fit check tells those.
 *
 * @returns why the pocket cannot be cut, or undefined when it was.
 */
export function cutPocket(solid: Solid, pocket: Pocket): string | undefined {
  const n = pocket.into;
  const host = solid.faces.find(
    (f) =>
      dot(f.normal, n) < -1e-9 &&
      Math.abs(aboveFace(solid, f, pocket.at)) < ON_FACE &&
      insideLoop(solid, f, pocket.at) !== 'outside',
  );
  if (!host) return 'there is no face under its mouth';
  const ring = pocketSection(pocket);
  if (pocket.depth === 'through') return cutThrough(solid, pocket.id, host, ring, pocket.at, n);

  const mouth = openMouth(solid, host, ring, n);
  if (!mouth) return `its mouth runs over the border of ${host.surface}`;
  const depth = pocket.depth;
  const floor = ring.map((p) => {
    solid.vertices.push(along(p, n, depth - reach(p, pocket.at, n)));
    return solid.vertices.length - 1;
  });
  solid.faces.push(face(solid.vertices, `${pocket.id}.floor`, [...floor].reverse()));
  walls(solid, pocket.id, mouth, { points: floor, crossings: new Map() });
  return undefined;
}

function cutThrough(
  solid: Solid,
  id: string,
  host: Face,
  ring: readonly Vec3[],
  at: Vec3,
  n: Vec3,
): string | undefined {
  const exit = wayOut(solid, at, n);
  if (!exit) return 'it does not come out anywhere';
  const loops = solid.faces.map((f) => f.loops.map((loop) => [...loop]));
  const mouth = openMouth(solid, host, ring, n);
  if (!mouth) return `its mouth runs over the border of ${host.surface}`;
  // Seen from outside the far face the ring runs the other way round.
  const out = openMouth(solid, exit, [...ring].reverse(), n);
  if (!out) {
    // The mouth is open already: close it again.
    solid.faces.forEach((f, i) => {
      f.loops.splice(0, f.loops.length, ...loops[i]!);
    });
    return `its far end runs over the border of ${exit.surface}`;
  }
  const last = ring.length - 1;
  const crossings = new Map([...out.crossings].map(([k, i]) => [(ring.length + last - k - 1) % ring.length, i]));
  walls(solid, id, mouth, { points: [...out.points].reverse(), crossings });
  return undefined;
}

/** One wall for each side of the ring; a crossing at either end is one more corner of its wall. */
function walls(solid: Solid, id: string, mouth: Mouth, end: Mouth): void {
  const name = `${id}.wall`;
  const count = mouth.points.length;
  for (let k = 0; k < count; k++) {
    const next = k + 1 === count ? 0 : k + 1;
    const loop = [mouth.points[next]!, mouth.points[k]!, end.points[k]!, end.points[next]!];
    const far = end.crossings.get(k);
    const near = mouth.crossings.get(k);
    if (far !== undefined) loop.splice(3, 0, far);
    if (near !== undefined) loop.splice(1, 0, near);
    solid.faces.push(face(solid.vertices, name, loop));
  }
}

/** The nearest face by which the axis leaves the wood. */
function wayOut(solid: Solid, at: Vec3, n: Vec3): Face | undefined {
  let best: Face | undefined;
  let nearest = Infinity;
  for (const f of solid.faces) {
    const slope = dot(f.normal, n);
    if (slope < 1e-9) continue;
    const t = -aboveFace(solid, f, at) / slope;
    if (t > ON_FACE && t < nearest - 1e-9 && insideLoop(solid, f, along(at, n, t)) !== 'outside') {
      best = f;
      nearest = t;
    }
  }
  return best;
}
