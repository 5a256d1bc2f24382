/** A point or direction in space, mm or a pure number. Which frame it stands in is said where it is used. */
export type Vec3 = readonly [number, number, number];

/** A point or direction in a plane. */
export type Vec2 = readonly [number, number];

export const add = (a: Vec3, b: Vec3): Vec3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const sub = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const scale = (a: Vec3, k: number): Vec3 => [a[0] * k, a[1] * k, a[2] * k];
export const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const length = (a: Vec3): number => Math.hypot(a[0], a[1], a[2]);

/** The point `k` times the direction `d` further on from `a`. */
export const along = (a: Vec3, d: Vec3, k: number): Vec3 => [a[0] + d[0] * k, a[1] + d[1] * k, a[2] + d[2] * k];

/** How far `p` lies from `origin` along the direction `d`. */
export const reach = (p: Vec3, origin: Vec3, d: Vec3): number =>
  (p[0] - origin[0]) * d[0] + (p[1] - origin[1]) * d[1] + (p[2] - origin[2]) * d[2];

export const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/** The direction of `a`. @throws RangeError when `a` has no length. */
export function unit(a: Vec3): Vec3 {
  const size = length(a);
  if (!(size > 0)) throw new RangeError(`[${a.join(', ')}] has no direction`);
  return scale(a, 1 / size);
}
