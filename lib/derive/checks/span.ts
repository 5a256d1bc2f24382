import type { Mm } from '../../units/mm.ts';

/** A stretch of a line, mm. */
export type Span = readonly [from: Mm, to: Mm];

/** Shorter than this is nothing, mm. */
const NOTHING: Mm = 1e-6;

/** How far two stretches run side by side; 0 or less when they do not. */
export const overlap = (a: Span, b: Span): Mm => Math.min(a[1], b[1]) - Math.max(a[0], b[0]);

export const spanLength = ([from, to]: Span): Mm => to - from;

export const middleOf = ([from, to]: Span): Mm => (from + to) / 2;

/** What is left of a stretch between those that are taken, from its start to its end. */
export function freeSpans(whole: Span, taken: readonly Span[]): Span[] {
  const free: Span[] = [];
  let from = whole[0];
  for (const [start, end] of [...taken].sort((a, b) => a[0] - b[0])) {
    const to = Math.min(start, whole[1]);
    if (to - from > NOTHING) free.push([from, to]);
    from = Math.max(from, end);
  }
  if (whole[1] - from > NOTHING) free.push([from, whole[1]]);
  return free;
}
