import type { Mm } from '../../../../units/mm.ts';
import { type Figure, ours } from '../ours.ts';

/** Lines of a grid over a plate, mm, ascending; the first and the last are its edges. */
export interface PlateGrid {
  readonly xs: Float64Array;
  readonly ys: Float64Array;
}

/** Number of elements along and across the grain. */
export interface GridCounts {
  readonly along: number;
  readonly across: number;
}

/** Enough for deflections: within 1 % of a fine grid, 7 % too much on an edge right over a bearer (computed). */
export const DEFLECTION_GRID: Figure<GridCounts> = ours({ along: 42, across: 16 }, 'our convention');

/** Enough for the mean stress at a bearer end, within 5 % of a fine grid (computed). */
export const STRESS_GRID: Figure<GridCounts> = ours({ along: 84, across: 32 }, 'our convention');

/** Elements that a stress needs between a bearer end and the edge next to it. */
export const LEAST_TO_EDGE: Figure = ours(4, 'our convention');

/** Two lines nearer than this are one: nobody places a bearer more exactly, and slivers spoil the digits. */
export const SAME_LINE: Mm = 0.05;

export interface GridLineOptions {
  /** The edges. */
  readonly from: Mm;
  readonly to: Mm;
  /** Where lines must lie: supports and their ends, creases, loads. Those outside the edges are left out. */
  readonly through: readonly Mm[];
  /** Elements from edge to edge; more when the lines ask for more, or when equal gaps are split alike. */
  readonly count: number;
  /** Stretches between two such lines (or edges) that need at least so many elements. */
  readonly least?: readonly { readonly from: Mm; readonly to: Mm; readonly count: number }[];
}

interface Gap {
  readonly from: Mm;
  readonly to: Mm;
  parts: number;
}

/**
 * Lines of one direction: every needed one, and between them as even as they allow. The widest elements are split first,
 * equal ones together, so that a symmetric piece gets a symmetric grid.
 *
 * ```
 *   edge  bearer   ridge   bearer  edge
 *   │ · · │ · · ·  │ · · · │ · ·   │
 * ```
 */
export function gridLines({ from, to, through, count, least = [] }: GridLineOptions): Float64Array {
  if (!(to - from > SAME_LINE)) throw new RangeError(`a grid from ${from} mm to ${to} mm has no width`);
  const gaps = gapsBetween(from, to, through);
  for (const stretch of least) split(gaps.filter(inside(stretch)), stretch.count);
  split(gaps, count);
  const lines = gaps.flatMap((gap) =>
    Array.from({ length: gap.parts }, (_, k) => gap.from + ((gap.to - gap.from) * k) / gap.parts),
  );
  return Float64Array.of(...lines, to);
}

function gapsBetween(from: Mm, to: Mm, through: readonly Mm[]): Gap[] {
  const stops = [from];
  for (const line of [...through].sort((a, b) => a - b)) {
    if (line - stops[stops.length - 1]! > SAME_LINE && to - line > SAME_LINE) stops.push(line);
  }
  return stops.map((stop, i) => ({ from: stop, to: stops[i + 1] ?? to, parts: 1 }));
}

const inside =
  (stretch: { readonly from: Mm; readonly to: Mm }) =>
  (gap: Gap): boolean =>
    gap.from > stretch.from - SAME_LINE && gap.to < stretch.to + SAME_LINE;

/** Adds elements to the gaps with the widest ones until there are `count`. */
function split(gaps: readonly Gap[], count: number): void {
  const size = (gap: Gap): Mm => (gap.to - gap.from) / gap.parts;
  let total = gaps.reduce((sum, gap) => sum + gap.parts, 0);
  while (gaps.length > 0 && total < count) {
    const widest = Math.max(...gaps.map(size)) * (1 - 1e-9);
    for (const gap of gaps) {
      if (size(gap) < widest) continue;
      gap.parts++;
      total++;
    }
  }
}

/** The number of the line at a coordinate. @throws RangeError when none lies there. */
export function lineAt(lines: Float64Array, at: Mm): number {
  const found = lines.findIndex((line) => Math.abs(line - at) <= SAME_LINE);
  if (found < 0) throw new RangeError(`there is no grid line at ${at} mm`);
  return found;
}
