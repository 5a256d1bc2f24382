import type { CutKind } from './cut-plan.ts';
import type { Grid } from './grid.ts';

/** A part in a pattern, in steps from the datum of the board. */
export interface Spot {
  readonly part: number;
  readonly x: number;
  readonly y: number;
}

/** A strip (rip first) or a section (crosscut first), in steps across the board or along it. */
export interface Lane {
  readonly from: number;
  readonly to: number;
}

/** How one board is cut up. */
export interface Pattern {
  readonly board: number;
  readonly first: CutKind;
  readonly lanes: readonly Lane[];
  readonly spots: readonly Spot[];
  /** How often each part comes out. */
  readonly counts: readonly number[];
}

/**
 * The pattern without what is not needed any more: takes its parts out of `left`, drops the rest, and drops groups that
 * are not whole.
 */
export function take(grid: Grid, pattern: Pattern, left: number[]): Pattern {
  const broken = brokenGroups(grid, pattern, left);
  const spots = pattern.spots.filter(({ part }) => {
    if (left[part]! <= 0 || broken.has(grid.parts[part]!.group)) return false;
    left[part]!--;
    return true;
  });
  if (spots.length === pattern.spots.length) return pattern;
  const counts = pattern.counts.map(() => 0);
  for (const { part } of spots) counts[part]!++;
  return { ...pattern, spots, counts };
}

/** Groups of which the pattern holds some parts but not all, or that are cut already. */
function brokenGroups(grid: Grid, { counts }: Pattern, left: readonly number[]): ReadonlySet<number> {
  const broken = new Set<number>();
  if (grid.groups > 0) {
    grid.parts.forEach((part, i) => {
      if (part.group >= 0 && (counts[i]! < part.count || left[i]! < part.count)) broken.add(part.group);
    });
  }
  return broken;
}

export const costOf = (grid: Grid, patterns: readonly Pattern[]): number =>
  patterns.reduce((sum, p) => sum + grid.boards[p.board]!.cost, 0);

/** Area of the parts over the area of the board. */
export const yieldOf = (grid: Grid, { counts, board }: Pattern): number =>
  counts.reduce((sum, n, i) => sum + n * grid.parts[i]!.area, 0) / grid.boards[board]!.area;
