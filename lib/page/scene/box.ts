import type { Vec3 } from '../../geometry/vec.ts';

/** A box along the axes of the table, mm. */
export interface Box {
  readonly min: Vec3;
  readonly max: Vec3;
}

const both = (a: Vec3, b: Vec3, pick: (...numbers: number[]) => number): Vec3 => [
  pick(a[0], b[0]),
  pick(a[1], b[1]),
  pick(a[2], b[2]),
];

export const around = (boxes: readonly Box[]): Box =>
  boxes.reduce((a, b) => ({ min: both(a.min, b.min, Math.min), max: both(a.max, b.max, Math.max) }));

export const cornersOf = ({ min, max }: Box): Vec3[] =>
  [min[0], max[0]].flatMap((x) => [min[1], max[1]].flatMap((y) => [min[2], max[2]].map((z): Vec3 => [x, y, z])));

export const middleOf = ({ min, max }: Box): Vec3 => [
  (min[0] + max[0]) / 2,
  (min[1] + max[1]) / 2,
  (min[2] + max[2]) / 2,
];
