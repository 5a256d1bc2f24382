import type { Vec3 } from '../../geometry/vec.ts';
import { dot } from '../../geometry/vec.ts';

/** A plane that cuts: what lies where normal · p is more than the offset is taken away. Unit normal; mm. */
export interface CutPlane {
  readonly normal: Vec3;
  readonly offset: number;
}

/** Distance over the plane, positive on the side that is taken away; mm. */
export const overPlane = ({ normal, offset }: CutPlane, p: Vec3): number => dot(normal, p) - offset;
