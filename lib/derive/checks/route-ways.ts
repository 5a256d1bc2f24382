import type { Mm } from '../../units/mm.ts';
import { type Corner, longestThrough, spareAround } from './corner-turn.ts';
import type { Load } from './packed-loads.ts';

/** How a load is held. */
export type Hold = 'on edge' | 'flat' | 'upright';

/** One way of carrying a load around a corner. */
export interface Way {
  readonly hold: Hold;
  /** mm to spare; negative by what is missing. */
  readonly spare: Mm;
  /** mm: the longest that would turn, held like this. */
  readonly longest: Mm;
}

/** The ways around a corner, as carriers would try them; upright only under a ceiling that is known to be high enough. */
export function waysAround({ sides: [long, middle, short] }: Load, corner: Corner, ceiling: Mm): Way[] {
  const way = (hold: Hold, length: Mm, width: Mm): Way => ({
    hold,
    spare: spareAround(corner, length, width),
    longest: longestThrough(corner, width),
  });
  return [
    way('on edge', long, short),
    way('flat', long, middle),
    ...(ceiling > 0 && swing(long, short) <= ceiling ? [way('upright', middle, short)] : []),
  ];
}

/** Height that a thing needs while it is stood up from lying flat, mm. */
export const swing = (long: Mm, short: Mm): Mm => Math.hypot(long, short);

/** mm to spare in a door, on edge or flat; negative by what is missing. */
export const spareInDoor = ({ sides: [, middle, short] }: Load, width: Mm, height: Mm): Mm =>
  Math.max(Math.min(height - middle, width - short), Math.min(width - middle, height - short));
