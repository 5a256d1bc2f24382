import { cross, dot, unit, type Vec3 } from '../../geometry/vec.ts';

/** A direction to look from, without perspective: three unit axes in the table's frame, right × up = toward. */
export interface View {
  readonly right: Vec3;
  readonly up: Vec3;
  /** From the piece to the viewer. */
  readonly toward: Vec3;
}

/**
 * The view with the viewer in the direction `toward`, and `up` (not along it) upright on the paper.
 *
 * @throws RangeError when the two have the same direction.
 */
export function viewFrom(toward: Vec3, up: Vec3 = [0, 0, 1]): View {
  const ahead = unit(toward);
  const right = unit(cross(up, ahead));
  return { right, up: cross(ahead, right), toward: ahead };
}

/**
 * The views by name. They stand around the front view as in third angle projection: the plan above it, the end view to
 * its right.
 */
export const VIEWS = {
  /** From above; along the table to the right. */
  plan: { right: [1, 0, 0], up: [0, 1, 0], toward: [0, 0, 1] },
  /** The long side at negative y, reference end to the left. */
  front: { right: [1, 0, 0], up: [0, 0, 1], toward: [0, -1, 0] },
  /** The far end. */
  end: { right: [0, 1, 0], up: [0, 0, 1], toward: [1, 0, 0] },
  /** From above, over the corner between front and far end; all three axes are shortened alike. */
  isometric: viewFrom([1, -1, 1]),
} as const satisfies Record<string, View>;

/** A point or direction of the table's frame in view coordinates: right, up, toward the viewer; mm. */
export const toView = (view: View, p: Vec3): Vec3 => [dot(view.right, p), dot(view.up, p), dot(view.toward, p)];
