import { cross, scale, type Vec3 } from '../../geometry/vec.ts';
import type { Pocket } from '../../model/feature.ts';

/** Facets of a half round end: 45 degrees each, so that a screw hole has eight sides. */
const HALF = 4;

/**
 * The mouth of a pocket as points in the plane square to its direction, clockwise seen from outside the wood (counter-clockwise about `into`). A round end
 * is faceted with its points on the true circle.
 */
export function pocketSection(pocket: Pocket): Vec3[] {
  const n = pocket.into;
  if (pocket.kind === 'bore') {
    const a = anySquareTo(n);
    return ring(pocket.at, a, cross(n, a), roundEnded(pocket.diameter, pocket.diameter));
  }
  const a = pocket.along;
  const square = pocket.kind === 'mortise' && pocket.ends === 'square';
  const shape = square ? rectangle(pocket.length, pocket.width) : roundEnded(pocket.length, pocket.width);
  return ring(pocket.at, a, cross(n, a), shape);
}

const ring = (at: Vec3, a: Vec3, b: Vec3, shape: readonly (readonly [number, number])[]): Vec3[] =>
  shape.map(([s, t]) => [at[0] + a[0] * s + b[0] * t, at[1] + a[1] * s + b[1] * t, at[2] + a[2] * s + b[2] * t]);

function rectangle(length: number, width: number): [number, number][] {
  const [s, t] = [length / 2, width / 2];
  return [
    [-s, -t],
    [s, -t],
    [s, t],
    [-s, t],
  ];
}

/** Counter-clockwise; a length equal to the width gives a circle without doubled points. */
export function roundEnded(length: number, width: number): [number, number][] {
  const r = width / 2;
  const half = length / 2 - r;
  const points: [number, number][] = [];
  for (const side of [1, -1]) {
    for (let k = half > 0 ? 0 : 1; k <= HALF; k++) {
      const turn = (k / HALF - 0.5) * Math.PI;
      points.push([side * (half + r * cosine(k)), side * r * Math.sin(turn)]);
    }
  }
  return points;
}

/** Cosine of the k-th facet corner of a half round, exactly 0 at its two ends. */
const cosine = (k: number): number => (k === 0 || k === HALF ? 0 : Math.cos((k / HALF - 0.5) * Math.PI));

function anySquareTo(n: Vec3): Vec3 {
  const axis: Vec3 = Math.abs(n[0]) < 0.9 ? [1, 0, 0] : [0, 1, 0];
  const a = cross(n, axis);
  return scale(a, 1 / Math.hypot(a[0], a[1], a[2]));
}
