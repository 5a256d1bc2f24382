import type { Mm } from '../../units/mm.ts';
import type { SeatMap } from './seat-map.ts';

/** Rounding, mm. */
const SAME: Mm = 1e-6;

/**
 * By how much every free stretch of the sides would have to be longer for so many places in all, mm; 0 when they are
 * there, undefined when the sides have no stretch that could grow.
 */
export function missingLength({ edges, places }: SeatMap, wanted: number, least: Mm): Mm | undefined {
  if (places.length >= wanted) return 0;
  const sides = edges.filter((e) => e.edge.kind === 'side').flatMap((e) => e.stretches.map((s) => s.clear));
  if (sides.length === 0) return undefined;
  const atEnds = edges.filter((e) => e.edge.kind === 'end').flatMap((e) => e.places).length;
  const seats = (more: Mm): number =>
    atEnds + sides.reduce((sum, clear) => sum + Math.floor((clear + more + SAME) / least), 0);
  // The next place of some stretch decides.
  const steps = sides.flatMap((clear) => Array.from({ length: wanted }, (_, k) => (k + 1) * least - clear));
  return Math.min(...steps.filter((more) => more > 0 && seats(more) >= wanted));
}
