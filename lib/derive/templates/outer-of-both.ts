import type { Outline, OutlinePoint } from '../../geometry/outline.ts';

/** Sides whose directions differ by less than this have no corner of their own. */
const PARALLEL = 1e-9;

/**
 * The outline that encloses both faces of a piece whose cut is not square to them: of each pair of parallel sides the outer
 * one. Between two slopes that fall away from each other it lies a little further out than either.
 */
export function outerOfBoth(near: Outline, far: Outline): Outline {
  const sides = near.map((a, i) => {
    const b = near[(i + 1) % near.length]!;
    const [ux, uy] = [b.x - a.x, b.y - a.y];
    const size = Math.hypot(ux, uy);
    const other = far[i]!;
    const outward = (uy * (other.x - a.x) - ux * (other.y - a.y)) / size;
    const from = !a.bulge && outward > 0 ? other : a;
    return { x: from.x, y: from.y, ux: ux / size, uy: uy / size };
  });
  return near.map((point, i): OutlinePoint => {
    const before = sides[(i + sides.length - 1) % sides.length]!;
    const after = sides[i]!;
    const turn = before.ux * after.uy - before.uy * after.ux;
    if (point.bulge || near[(i + near.length - 1) % near.length]!.bulge || Math.abs(turn) < PARALLEL) return point;
    const t = ((after.x - before.x) * after.uy - (after.y - before.y) * after.ux) / turn;
    return { ...point, x: before.x + before.ux * t, y: before.y + before.uy * t };
  });
}
