import { type Frame, toOuter, turnOut } from './frame.ts';
import { type Surface, sectionAlong } from './surface.ts';
import type { Vec3 } from './vec.ts';

/** A point of the line along which a face of a part meets a surface above it. */
export interface ScribePoint {
  /** mm, along the level axis of the part. */
  readonly along: number;
  /** mm, along the upright axis of the part. */
  readonly height: number;
  /** The plane that the line follows from here to the next point. */
  readonly plane: string;
}

/**
 * Where a flat face of a part meets a surface: start, every crease, end. The part stands with its `level` axis level; the
 * other axis of its face is upright.
 *
 * @param frame where the part stands in the table's frame.
 * @param from @param to stretch of the level axis, mm in the part's frame.
 * @param z the face: mm in the part's frame, from the reference face.
 */
export function scribe(
  surface: Surface,
  frame: Frame,
  level: 'x' | 'y',
  from: number,
  to: number,
  z: number,
): ScribePoint[] {
  const point = (along: number): Vec3 => toOuter(frame, level === 'x' ? [along, 0, z] : [0, along, z]);
  const up = turnOut(frame, level === 'x' ? [0, 1, 0] : [1, 0, 0]);
  if (Math.abs(up[2] - 1) > 1e-9)
    throw new RangeError(`the part does not stand upright: its up axis is [${up.join(', ')}]`);
  const [a, b] = [point(from), point(to)];
  const base = a[2];
  return sectionAlong(surface, [a[0], a[1]], [b[0], b[1]]).map((p) => ({
    along: from + p.s,
    height: p.z - base,
    plane: p.plane,
  }));
}
