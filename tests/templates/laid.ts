import type { PlaceInFile, PointInFile, Vec } from './cases.ts';

const dot = (a: Vec, b: Vec): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Vec, b: Vec): Vec => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const sum = (...parts: readonly (readonly [Vec, number])[]): Vec =>
  [0, 1, 2].map((k) => parts.reduce((total, [v, by]) => total + v[k as 0] * by, 0)) as unknown as Vec;

/** A point of a part's frame in the table's: the frame is an origin and two axes, the third is their cross product. */
export const inTable = ({ origin, x, y }: PlaceInFile, p: Vec): Vec =>
  sum([origin, 1], [x, p[0]], [y, p[1]], [cross(x, y), p[2]]);

const UP: Vec = [0, 0, 1];

/** A sheet held against the reference face of a part as it stands, print outwards. */
export interface LaidSheet {
  /** Where a point of the sheet comes to lie, in the table's frame. */
  onTable(x: number, y: number): Vec;
  /** Where a point of the table is seen on the sheet, looking square at the face. */
  onSheet(p: Vec): readonly [number, number];
}

/**
 * Lays the lower left corner of a sheet on that of the face. One who looks at the face looks into the wood, along the
 * part's z axis, with the floor below; what lies to the right of him is that direction × up.
 */
export function lay(frame: PlaceInFile, outline: readonly PointInFile[]): LaidSheet {
  const into = cross(frame.x, frame.y);
  const right = cross(into, UP);
  const corners = outline.map((p) => inTable(frame, [p.x, p.y, 0]));
  const [left, low] = [Math.min(...corners.map((p) => dot(p, right))), Math.min(...corners.map((p) => p[2]))];
  const face = dot(frame.origin, into);
  return {
    onTable: (x, y) => sum([into, face], [right, left + x], [UP, low + y]),
    onSheet: (p) => [dot(p, right) - left, p[2] - low],
  };
}
