import { type Frame, zAxis } from '../../geometry/frame.ts';
import type { Vec3 } from '../../geometry/vec.ts';
import type { Bounds } from './solid.ts';

/** The box around points of a piece, as the outer frame sees them; to the last bit that of the points turned one by one. */
export function placedBounds(frame: Frame, points: readonly Vec3[]): Bounds {
  const { origin, x, y } = frame;
  const z = zAxis(frame);
  const min: [number, number, number] = [Infinity, Infinity, Infinity];
  const max: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  for (const p of points) {
    for (let k = 0; k < 3; k++) {
      const at = origin[k]! + (x[k]! * p[0] + y[k]! * p[1] + z[k]! * p[2]);
      if (at < min[k]!) min[k] = at;
      if (at > max[k]!) max[k] = at;
    }
  }
  return { min, max };
}
