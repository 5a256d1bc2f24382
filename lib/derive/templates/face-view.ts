import { type Frame, turnIn } from '../../geometry/frame.ts';
import type { Outline } from '../../geometry/outline.ts';
import type { Vec2 } from '../../geometry/vec.ts';

/** The outlines of a part on its sheet. */
export interface FaceOutlines {
  readonly near: Outline;
  /** On the far face, when the cut is not square to the faces. */
  readonly far?: Outline;
  /** As designed, when the part follows an underside that was measured and came out otherwise. */
  readonly designed?: Outline;
}

/**
 * A part seen square on its reference face as it stands: what a template shows when it is laid on that face. The z axis of
 * the part runs away from the viewer, so its x and y appear mirrored: an outline is walked backwards to stay
 * counter-clockwise.
 */
export interface FaceView {
  /** x to the right, y up, mm; the lower left corner of the part is the origin. */
  toSheet(x: number, y: number): Vec2;
  outline(outline: Outline): Outline;
}

/** @throws RangeError when the part's face does not stand upright. */
export function faceView(frame: Frame, outline: Outline): FaceView {
  const [ux, uy, uz] = turnIn(frame, [0, 0, 1]);
  if (Math.abs(uz) > 1e-9) throw new RangeError('the reference face does not stand upright');
  // The viewer looks along +z of the part; right = z × up.
  const see = (x: number, y: number): Vec2 => [-uy * x + ux * y + 0, ux * x + uy * y + 0];
  const corners = outline.map((p) => see(p.x, p.y));
  const left = Math.min(...corners.map((p) => p[0]));
  const low = Math.min(...corners.map((p) => p[1]));
  const toSheet = (x: number, y: number): Vec2 => {
    const p = see(x, y);
    return [p[0] - left, p[1] - low];
  };
  return {
    toSheet,
    outline: (o) =>
      o.map((_, i) => {
        // Point n-1-i starts the segment that point n-2-i started in the other direction.
        const { bulge, surface } = o[(2 * o.length - 2 - i) % o.length]!;
        const at = o[o.length - 1 - i]!;
        const [x, y] = toSheet(at.x, at.y);
        return { x, y, ...(bulge ? { bulge } : {}), ...(surface === undefined ? {} : { surface }) };
      }),
  };
}
