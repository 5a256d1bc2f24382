import { toOuter } from '../../geometry/frame.ts';
import { heightAt, type Surface, sectionAlong, surfaceToOuter } from '../../geometry/surface.ts';
import type { Vec2, Vec3 } from '../../geometry/vec.ts';
import { type Assembly, placeOf, visibleParts } from '../../model/assembly.ts';
import type { Part } from '../../model/part.ts';
import type { Mm } from '../../units/mm.ts';
import { type Bounds, boundsOf } from '../solids/solid.ts';
import { blankOf } from '../solids/solid-of.ts';

/** A piece of the base, and the box around it in the table's frame. */
export interface Obstacle {
  readonly part: Part;
  readonly box: Bounds;
}

/** A top and what stands under it: all that whoever sits at the table can meet. */
export interface RoomUnder {
  readonly top: Part;
  /** mm, in the table's frame. */
  readonly box: Bounds;
  /** Heights of the underside over the floor. */
  readonly underside: Surface;
  readonly obstacles: readonly Obstacle[];
}

/**
 * The room under a table; undefined when the piece has no top of one panel. Handled: tops with edges along x and y of the
 * table. A leaning or hollow piece counts with the box around it.
 */
export function roomUnder(assembly: Assembly): RoomUnder | undefined {
  const top = assembly.parts.find((p) => p.body.kind === 'panel');
  if (top?.body.kind !== 'panel') return undefined;
  const { underside } = top.body;
  const frame = placeOf(assembly, top.id);
  const inside = new Set([top.id, ...(top.members ?? [])]);
  const base = visibleParts(assembly).filter((p) => !inside.has(p.id) && p.kind !== 'looseTenon');
  return {
    top,
    box: placedBox(assembly, top),
    underside: surfaceToOuter(underside, frame),
    obstacles: base.map((part) => ({ part, box: placedBox(assembly, part) })),
  };
}

/** The box around a part where it stands, mm in the table's frame. */
export function placedBox(assembly: Assembly, part: Part): Bounds {
  const frame = placeOf(assembly, part.id);
  return boundsOf(outerPoints(part).map((p) => toOuter(frame, p)));
}

/** Points of a part that reach as far as the part does, in its own frame. */
function outerPoints(part: Part): Vec3[] {
  const { body, finished } = part;
  if (body.kind !== 'panel') return blankOf(part).vertices;
  const { length, width } = body;
  return [0, length].flatMap((x) =>
    [-width / 2, width / 2].flatMap((y) => [0, finished.thickness].map((z): Vec3 => [x, y, z])),
  );
}

/**
 * Least height of a surface over a rectangle of the plan, given by its corners in order, mm. Exact for a flat underside
 * and for a ridge; a peak that hangs down inside the rectangle is seen only where a diagonal meets it.
 */
export function lowestOver(surface: Surface, corners: readonly [Vec2, Vec2, Vec2, Vec2]): Mm {
  const [a, b, c, d] = corners;
  const lines: readonly (readonly [Vec2, Vec2])[] = [
    [a, b],
    [b, c],
    [c, d],
    [d, a],
    [a, c],
    [b, d],
  ];
  return Math.min(...lines.flatMap(([p, q]) => (same(p, q) ? heightAt(surface, ...p) : lowestAlong(surface, p, q))));
}

const lowestAlong = (surface: Surface, p: Vec2, q: Vec2): Mm =>
  Math.min(...sectionAlong(surface, p, q).map((point) => point.z));

const same = (p: Vec2, q: Vec2): boolean => p[0] === q[0] && p[1] === q[1];
