import { add, scale, type Vec3 } from '../../geometry/vec.ts';
import type { PartId } from '../../model/part.ts';
import type { Pull } from './pulls.ts';

/** Holds the middle where it is, and pieces that nothing pulls. */
const HOLD = 1e-4;

/**
 * Where every piece goes when all joints are opened, mm: as far from its neighbors as they are pulled, in the sense of
 * least squares where they do not agree. Tenons go half-way between their two pieces. Nothing sinks below where the
 * lowest piece stood.
 */
export function apart(ids: readonly PartId[], pulls: readonly Pull[]): Map<PartId, Vec3> {
  const axes = [0, 1, 2].map((k) => solveAxis(ids, pulls, k as 0 | 1 | 2));
  const floor = Math.min(0, ...axes[2]!);
  const moved = new Map(ids.map((id, n): [PartId, Vec3] => [id, [axes[0]![n]!, axes[1]![n]!, axes[2]![n]! - floor]]));
  for (const { from, to, tenons } of pulls) {
    const between = scale(add(moved.get(from)!, moved.get(to)!), 0.5);
    for (const tenon of tenons) moved.set(tenon, between);
  }
  return moved;
}

/** Normal equations of all pulls along one axis. */
function solveAxis(ids: readonly PartId[], pulls: readonly Pull[], axis: 0 | 1 | 2): number[] {
  const at = new Map(ids.map((id, n) => [id, n]));
  const rows = ids.map((_, n) => ids.map((__, m) => (n === m ? HOLD : 0)));
  const right = ids.map(() => 0);
  for (const { from, to, by, weight } of pulls) {
    const [i, j, w] = [at.get(from)!, at.get(to)!, weight];
    rows[i]![i]! += w;
    rows[j]![j]! += w;
    rows[i]![j]! -= w;
    rows[j]![i]! -= w;
    right[i]! -= w * by[axis];
    right[j]! += w * by[axis];
  }
  return eliminate(rows, right);
}

/** Solves a symmetric positive definite system in place, by Gauss without pivots. */
function eliminate(rows: number[][], right: number[]): number[] {
  const n = right.length;
  for (let p = 0; p < n; p++) {
    for (let r = p + 1; r < n; r++) {
      const share = rows[r]![p]! / rows[p]![p]!;
      if (share === 0) continue;
      for (let c = p; c < n; c++) rows[r]![c]! -= share * rows[p]![c]!;
      right[r]! -= share * right[p]!;
    }
  }
  for (let p = n - 1; p >= 0; p--) {
    for (let c = p + 1; c < n; c++) right[p]! -= rows[p]![c]! * right[c]!;
    right[p]! /= rows[p]![p]!;
  }
  return right;
}
