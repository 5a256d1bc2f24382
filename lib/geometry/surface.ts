import { type Frame, toInner, turnIn } from './frame.ts';
import { dot, scale, type Vec2, type Vec3 } from './vec.ts';

/** The plane z = a·x + b·y + c over a plan; a and b are rises per mm, c is in mm. */
export interface Plane {
  /** Which piece of the surface this is: "left", "right". */
  readonly name: string;
  readonly a: number;
  readonly b: number;
  readonly c: number;
}

/**
 * A piecewise-planar surface over a plan with exact creases: everywhere the highest (or everywhere the lowest) of its
 * planes. Handled: flat, single slope, wedge, hip. Not handled: a surface that is hollow in one place and ridged in
 * another.
 */
export interface Surface {
  readonly take: 'highest' | 'lowest';
  readonly planes: readonly Plane[];
}

export const planeHeight = (plane: Plane, x: number, y: number): number => plane.a * x + plane.b * y + plane.c;

/** The plane that makes the surface at a point. */
export function planeAt(surface: Surface, x: number, y: number): Plane {
  let best = surface.planes[0]!;
  for (const plane of surface.planes) {
    const d = planeHeight(plane, x, y) - planeHeight(best, x, y);
    if (surface.take === 'highest' ? d > 0 : d < 0) best = plane;
  }
  return best;
}

/** Height of the surface over a point of the plan, mm. */
export const heightAt = (surface: Surface, x: number, y: number): number => planeHeight(planeAt(surface, x, y), x, y);

export interface SectionPoint {
  /** Distance along the line from its start, mm. */
  readonly s: number;
  /** Height of the surface there, mm. */
  readonly z: number;
  /** The plane that the surface follows from here to the next point. */
  readonly plane: string;
}

/** The surface cut by the upright plane through `from` and `to`: start, every crease in between, end. */
export function sectionAlong(surface: Surface, from: Vec2, to: Vec2): SectionPoint[] {
  const span = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const at = (s: number): Vec2 => [from[0] + ((to[0] - from[0]) * s) / span, from[1] + ((to[1] - from[1]) * s) / span];
  const stops = [0, ...creases(surface, from, to).map((t) => t * span), span];
  return stops.map((s, i) => {
    const p = at(s);
    const middle = at(i + 1 < stops.length ? (s + stops[i + 1]!) / 2 : (s + stops[i - 1]!) / 2);
    return { s, z: heightAt(surface, p[0], p[1]), plane: planeAt(surface, middle[0], middle[1]).name };
  });
}

/** Where, between 0 and 1 along the line, the surface passes from one plane to another. */
function creases(surface: Surface, from: Vec2, to: Vec2): number[] {
  const found: number[] = [];
  surface.planes.forEach((p, i) => {
    for (const q of surface.planes.slice(i + 1)) {
      const start = planeHeight(p, from[0], from[1]) - planeHeight(q, from[0], from[1]);
      const end = planeHeight(p, to[0], to[1]) - planeHeight(q, to[0], to[1]);
      const t = start / (start - end);
      if (!(t > 1e-12 && t < 1 - 1e-12)) continue;
      const x = from[0] + (to[0] - from[0]) * t;
      const y = from[1] + (to[1] - from[1]) * t;
      if (Math.abs(heightAt(surface, x, y) - planeHeight(p, x, y)) < 1e-9) found.push(t);
    }
  });
  return found.sort((a, b) => a - b).filter((t, i) => i === 0 || t - found[i - 1]! > 1e-12);
}

/**
 * A surface of a piece as the outer frame sees it: heights over the outer plan.
 *
 * @throws RangeError when a plane of it stands upright or overhangs, so that there is no one height over the plan.
 */
export function surfaceToOuter(surface: Surface, frame: Frame): Surface {
  const upIn = turnIn(frame, [0, 0, 1]);
  const originIn = toInner(frame, [0, 0, 0]);
  const xIn = turnIn(frame, [1, 0, 0]);
  const yIn = turnIn(frame, [0, 1, 0]);
  const planes = surface.planes.map((p): Plane => {
    // The plane as n · q = d with q in the piece's frame; q = origin + x·X + y·Y + z·Z for the outer point (x, y, z).
    const n: Vec3 = [-p.a, -p.b, 1];
    const nz = dot(n, upIn);
    if (nz * Math.sign(upIn[2]) < 1e-9) throw new RangeError(`plane ${p.name} stands upright or overhangs when placed`);
    const k = scale([dot(n, xIn), dot(n, yIn), dot(n, originIn) - p.c], -1 / nz);
    return { name: p.name, a: k[0] + 0, b: k[1] + 0, c: k[2] };
  });
  const flipped = upIn[2] < 0;
  return { take: flipped === (surface.take === 'highest') ? 'lowest' : 'highest', planes };
}
