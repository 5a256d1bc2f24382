import { type Deg, degrees, radians } from '../units/mm.ts';
import type { Pt } from './entity.ts';

export const sub = (a: Pt, b: Pt): Pt => [a[0] - b[0], a[1] - b[1]];
export const dot = (a: Pt, b: Pt): number => a[0] * b[0] + a[1] * b[1];
export const cross = (a: Pt, b: Pt): number => a[0] * b[1] - a[1] * b[0];

/** `from`, gone `distance` along `direction`. */
export const along = (from: Pt, direction: Pt, distance: number): Pt => [
  from[0] + direction[0] * distance,
  from[1] + direction[1] * distance,
];

export const opposite = (a: Pt): Pt => [-a[0], -a[1]];
export const left = (a: Pt): Pt => [-a[1], a[0]];
export const middle = (a: Pt, b: Pt): Pt => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
export const distance = (a: Pt, b: Pt): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

/** Direction of an angle; quarter turns are exact. */
export function polar(angle: Deg): Pt {
  const quarter = (((angle / 90) % 4) + 4) % 4;
  if (quarter === 0) return [1, 0];
  if (quarter === 1) return [0, 1];
  if (quarter === 2) return [-1, 0];
  if (quarter === 3) return [0, -1];
  return [Math.cos(radians(angle)), Math.sin(radians(angle))];
}

/** Angle of a direction, from 0 up to 360. */
export function angleOf(a: Pt): Deg {
  const angle = degrees(Math.atan2(a[1], a[0]));
  return angle < 0 ? angle + 360 : angle;
}

/** @throws RangeError when the points coincide: `what` names them in the message. */
export function direction(from: Pt, to: Pt, what: string): Pt {
  const length = distance(from, to);
  if (!(length > 1e-9)) throw new RangeError(`${what} both lie at ${to[0]}, ${to[1]}`);
  return [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
}

/** How far past vertical a line may lean and still be lettered from the right: common practice, no source. */
const LEAN = 15;

/** The angle of lettering along a line, so that it reads from the bottom or from the right of the sheet. */
export function upright(angle: Deg): Deg {
  const half = ((angle % 180) + 180) % 180;
  return half > 90 + LEAN ? half - 180 : half;
}
