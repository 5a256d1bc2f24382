import { add, cross, dot, scale, sub, type Vec3 } from './vec.ts';

/**
 * A place and an attitude: where a piece's own origin, x and y axis lie in the table's frame. The z axis is x × y, so a
 * frame can turn a piece but never mirror it.
 */
export interface Frame {
  /** mm, in the outer frame. */
  readonly origin: Vec3;
  /** Unit directions in the outer frame, square to each other. */
  readonly x: Vec3;
  readonly y: Vec3;
}

export const zAxis = (frame: Frame): Vec3 => cross(frame.x, frame.y);

/** A direction of the piece as the outer frame sees it. */
export const turnOut = (frame: Frame, d: Vec3): Vec3 =>
  add(add(scale(frame.x, d[0]), scale(frame.y, d[1])), scale(zAxis(frame), d[2]));

/** A point of the piece as the outer frame sees it. */
export const toOuter = (frame: Frame, p: Vec3): Vec3 => add(frame.origin, turnOut(frame, p));

/** A direction of the outer frame as the piece sees it. */
export const turnIn = (frame: Frame, d: Vec3): Vec3 => [dot(d, frame.x), dot(d, frame.y), dot(d, zAxis(frame))];

/** A point of the outer frame as the piece sees it. */
export const toInner = (frame: Frame, p: Vec3): Vec3 => turnIn(frame, sub(p, frame.origin));

/** The frame `inner`, given as `outer` sees it, in whatever `outer` itself stands in. */
export const within = (outer: Frame, inner: Frame): Frame => ({
  origin: toOuter(outer, inner.origin),
  x: turnOut(outer, inner.x),
  y: turnOut(outer, inner.y),
});
