import type { Mm } from '../../units/mm.ts';
import { read } from '../../wood/sourced.ts';

// Published lines of access and seating, in inches as printed. They are shown as information; local codes decide.

const INCH = 25.4;

const ADA = '2010 ADA Standards 306 and 902 (read in reference copies)';

/** Knee place for a wheelchair, mm. */
export const WHEELCHAIR_BOX = read(
  { height: 27 * INCH, width: 30 * INCH, depth: 19 * INCH },
  'federal accessibility guidance on tables: 27 in high, 30 in wide, 19 in deep (read in excerpt)',
);

/** Height of the top, 902.3, mm. */
export const WHEELCHAIR_TOP = read({ least: 28 * INCH, most: 34 * INCH }, ADA);

/** Toe clearance, 306.2, and knee clearance, 306.3, mm: depth under the edge at the heights where it is asked for. */
export const KNEE_LINE = read(
  { toes: 9 * INCH, toeDepth: 17 * INCH, low: 11 * INCH, knees: 27 * INCH, high: 8 * INCH, width: 30 * INCH },
  ADA,
);

/** Depth that 306 asks for at a height over the floor, mm: 11 in at 9 in, 8 in at 27 in, straight between (computed). */
export function kneeLineDepth(up: Mm): Mm {
  const { toes, toeDepth, low, knees, high } = KNEE_LINE.value;
  if (up < toes) return toeDepth;
  return up > knees ? 0 : low - ((low - high) * (up - toes)) / (knees - toes);
}

/** Room between a table and the wall, mm: tight, usual. 42 in to pass. */
export const WALL_ROOM = read(
  { tight: 30 * INCH, usual: 36 * INCH, pass: 42 * INCH },
  'published dining-room guidance: 30 in tight, 36 in usual, 42 in to pass (read in excerpt)',
);

/** Room behind a seated person, from the edge of the table, mm: nobody passes, one edges past, one walks past. */
export const BEHIND_SEAT = read(
  { still: 32 * INCH, edge: 36 * INCH, walk: 44 * INCH },
  'kitchen planning guideline: behind a seat 32 in, 36 in to edge past, 44 in to walk past (second-hand)',
);

/**
 * Where the limits of ordinary places come from: place 23 in least and 30 in roomy, thigh 6 to 7 in over a seat of 17 to
 * 18 in, overhang at an end 12 in least.
 */
export const SEATING = 'seating of the site; its defaults follow published dining-table guidance (read in excerpt)';
