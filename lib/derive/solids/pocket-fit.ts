import { add, cross, dot, scale, sub, type Vec3 } from '../../geometry/vec.ts';
import { isPocket, type Pocket } from '../../model/feature.ts';
import type { Part } from '../../model/part.ts';
import { boxGap, type Convex, convex, separation, triangle } from './convex.ts';
import { cutPocket } from './pocket.ts';
import { pocketSection } from './pocket-section.ts';
import { boundsOf, type Face, type Solid } from './solid.ts';
import { blankOf } from './solid-of.ts';
import { triangulateFace } from './triangulate.ts';

/** How much wood stands around a pocket. */
export interface PocketFit {
  readonly feature: string;
  /** mm of wood to the nearest other surface, at most `near`; negative when the pocket breaks through it. */
  readonly wall: number;
  /** What the nearest surface belongs to: "underside.left", "slot-2.wall"; empty when nothing is near. */
  readonly against: string;
  /** Why the pocket cannot be cut at all. */
  readonly refused?: string;
}

/**
 * The wood around every pocket of a part, in the order of making: each is compared with every face of the part as it is
 * before that cut, walls of earlier pockets included. The faces it opens do not count.
 */
export function pocketFits(part: Part, near: number): PocketFit[] {
  const solid = blankOf(part);
  return part.features.filter(isPocket).map((pocket) => {
    const sizes = solid.faces.map(size);
    const refused = cutPocket(solid, pocket);
    if (refused) return { feature: pocket.id, wall: Number.NEGATIVE_INFINITY, against: '', refused };
    // Faces that were there before and have not been opened; those of the pocket itself come after them.
    const closed = solid.faces.slice(0, sizes.length).filter((f, i) => size(f) === sizes[i]);
    const body = pocketBody(pocket, solid);
    // A screw hole begins in the middle of its own counterbore.
    const own = `${pocket.id}-counterbore`;
    const obstacles = closed.filter((f) => !f.surface.startsWith(own));
    return { feature: pocket.id, ...nearest(body, solid, obstacles, near) };
  });
}

const size = (f: Face): number => f.loops.reduce((n, l) => n + l.length, 0);

function nearest(
  body: Convex,
  solid: Solid,
  obstacles: readonly Face[],
  near: number,
): Pick<PocketFit, 'wall' | 'against'> {
  let wall = near;
  let against = '';
  for (const f of obstacles) {
    const box = boundsOf(f.loops[0]!.map((i) => solid.vertices[i]!));
    if (boxGap(box, body.bounds) >= wall) continue;
    const corners: number[] = [];
    triangulateFace(solid.vertices, f, corners);
    for (let t = 0; t < corners.length; t += 3) {
      const [a, b, c] = [
        solid.vertices[corners[t]!]!,
        solid.vertices[corners[t + 1]!]!,
        solid.vertices[corners[t + 2]!]!,
      ];
      const gap = separation(body, triangle(a, b, c), wall);
      if (gap < wall) {
        wall = gap;
        against = f.surface;
      }
    }
  }
  return { wall, against };
}

/** The pocket as a convex body in the frame of its part: its section from the mouth to the floor, or to the far side. */
export function pocketBody(pocket: Pocket, solid: Solid): Convex {
  const ring = pocketSection(pocket);
  const n = pocket.into;
  const depth =
    pocket.depth === 'through' ? Math.max(...solid.vertices.map((p) => dot(sub(p, pocket.at), n))) : pocket.depth;
  const floor = ring.map((p) => add(p, scale(n, depth)));
  const sides: Vec3[] = ring.map((p, k) => sub(ring[(k + 1) % ring.length]!, p));
  return convex([...ring, ...floor], [n, ...sides.map((e) => cross(e, n))], [n, ...sides]);
}
