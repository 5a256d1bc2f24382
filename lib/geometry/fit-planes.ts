import { leastSquares } from './least-squares.ts';
import type { Plane } from './surface.ts';
import type { Vec3 } from './vec.ts';

/** A plane through measured points, by least squares of the heights. */
export interface FittedPlane {
  readonly plane: Plane;
  /** Measured height less that of the plane, mm, in the order of the points. */
  readonly residuals: readonly number[];
  /** Root of the mean square of the residuals, mm. */
  readonly rms: number;
  /** Standard deviation of the rises a and b, and of the height over the middle of the points, for readings off by 1 mm. */
  readonly spread: { readonly a: number; readonly b: number; readonly middle: number };
  /** How much b changes for each mm of x: 0 for a true plane. Undefined when the points cannot tell. */
  readonly twist?: number;
}

/** Points less than this beside their best line, root of the mean square, do not make a plane, mm (our convention). */
const BESIDE = 10;

/** Why there is no plane: too few points, or all of them near one line. */
export type NoPlane = 'few' | 'line along x' | 'line along y' | 'line';

/** The plane nearest to points, or why they do not make one. */
export function fitPlane(name: string, points: readonly Vec3[]): FittedPlane | NoPlane {
  if (points.length < 3) return 'few';
  const line = nearLine(points);
  if (line) return line;
  const n = points.length;
  const mean = ([0, 1] as const).map((k) => points.reduce((sum, p) => sum + p[k], 0) / n) as [number, number];
  const scale = ([0, 1] as const).map((k) => Math.max(...points.map((p) => Math.abs(p[k] - mean[k])))) as [
    number,
    number,
  ];
  const heights = points.map((p) => p[2]);
  const [x, y] = ([0, 1] as const).map((k) => points.map((p) => (p[k] - mean[k]) / scale[k])) as [number[], number[]];
  const one = points.map(() => 1);
  const flat = leastSquares([one, x, y], heights)!;
  const [middle, rx, ry] = flat.coefficients as [number, number, number];
  const a = rx / scale[0] + 0;
  const b = ry / scale[1] + 0;
  const product = x.map((value, k) => value * y[k]!);
  const twisted = n > 4 ? leastSquares([one, x, y, product], heights) : undefined;
  const [vm, va, vb] = flat.variances as [number, number, number];
  return {
    plane: { name, a, b, c: middle - a * mean[0] - b * mean[1] },
    residuals: flat.residuals,
    rms: Math.sqrt(flat.residuals.reduce((sum, r) => sum + r * r, 0) / n),
    spread: { a: Math.sqrt(va) / scale[0], b: Math.sqrt(vb) / scale[1], middle: Math.sqrt(vm) },
    ...(twisted ? { twist: twisted.coefficients[3]! / (scale[0] * scale[1]) } : {}),
  };
}

/** Whether points lie on a line of the plan, and along which axis: from the lesser axis of their ellipse. */
function nearLine(points: readonly Vec3[]): NoPlane | undefined {
  const n = points.length;
  const [mx, my] = ([0, 1] as const).map((k) => points.reduce((sum, p) => sum + p[k], 0) / n) as [number, number];
  const moment = (f: (x: number, y: number) => number): number =>
    points.reduce((sum, p) => sum + f(p[0] - mx, p[1] - my), 0) / n;
  const [xx, yy, xy] = [moment((x) => x * x), moment((_, y) => y * y), moment((x, y) => x * y)];
  const lesser = (xx + yy) / 2 - Math.hypot((xx - yy) / 2, xy);
  if (lesser >= BESIDE ** 2) return undefined;
  if (yy < BESIDE ** 2) return 'line along x';
  return xx < BESIDE ** 2 ? 'line along y' : 'line';
}
