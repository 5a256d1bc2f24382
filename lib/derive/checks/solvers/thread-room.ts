import type { Mm } from '../../../units/mm.ts';
import { type Figure, ours } from './ours.ts';

/** Wood left between the tip of a screw and the show face: 3/8 in. */
export const SCREW_COVER: Figure<Mm> = ours(9.525, 'our convention, 3/8 in');

/** Least thread over shank diameter. */
export const LEAST_THREAD: Figure = ours(4, 'our convention');

export interface ThreadRoomOptions {
  /** Of the top at the screw. */
  readonly thickness: Mm;
  /** That a bracket or block takes from it; 0 when the screw goes straight in. */
  readonly bracket: Mm;
  readonly shank: Mm;
  readonly cover?: Mm;
}

/** Length of thread that a top has room for at a screw. */
export interface ThreadRoom {
  /** 0 or less when there is no room at all. */
  readonly thread: Mm;
  /** Under four shank diameters. */
  readonly short: boolean;
}

export function threadRoom({ thickness, bracket, shank, cover = SCREW_COVER.value }: ThreadRoomOptions): ThreadRoom {
  const thread = thickness - bracket - cover;
  return { thread, short: thread < LEAST_THREAD.value * shank - 1e-9 };
}
