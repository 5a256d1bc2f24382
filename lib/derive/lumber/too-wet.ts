import type { Board } from '../../model/records.ts';

/** Wood with more moisture is left for later, percent: common practice, no source. */
export const MOST_MOISTURE = 9;

/** A board that must dry before it is used. */
export const isTooWet = ({ moisture = 0 }: Board): boolean => moisture > MOST_MOISTURE;
