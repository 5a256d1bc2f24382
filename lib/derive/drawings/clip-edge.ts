import type { Vec3 } from '../../geometry/vec.ts';
import { type Cover, ON } from './cover.ts';
import type { Interval } from './interval.ts';

/**
 * The stretch of a segment that lies over a cover in the view plane, before or behind it; undefined for none. The border
 * belongs to the cover: nothing shines through between two triangles. What runs exactly behind an outline is hidden by
 * it, and on paper it is that outline.
 */
export function overlap(cover: Cover, a: Vec3, b: Vec3): Interval | undefined {
  let from = 0;
  let to = 1;
  for (const s of cover.sides) {
    const atA = s.a * a[0] + s.b * a[1] + s.c + ON;
    const atB = s.a * b[0] + s.b * b[1] + s.c + ON;
    if (atA <= 0 && atB <= 0) return undefined;
    if (atA < 0) from = Math.max(from, atA / (atA - atB));
    if (atB < 0) to = Math.min(to, atA / (atA - atB));
    if (from >= to) return undefined;
  }
  return [from, to];
}

/** The stretch of a segment that a cover hides; undefined for none. */
export function hiddenBy(cover: Cover, a: Vec3, b: Vec3): Interval | undefined {
  if (cover.nearest < a[2] && cover.nearest < b[2]) return undefined;
  const { normal: n, offset } = cover;
  const atA = offset - ON - (n[0] * a[0] + n[1] * a[1] + n[2] * a[2]);
  const atB = offset - ON - (n[0] * b[0] + n[1] * b[1] + n[2] * b[2]);
  if (atA <= 0 && atB <= 0) return undefined;
  const over = overlap(cover, a, b);
  if (!over) return undefined;
  const from = atA < 0 ? Math.max(over[0], atA / (atA - atB)) : over[0];
  const to = atB < 0 ? Math.min(over[1], atA / (atA - atB)) : over[1];
  return from < to ? [from, to] : undefined;
}
