import { type Edits, sameEdits } from './edits.ts';

/** What was tried, to go back and forth in. */
export interface History {
  readonly past: readonly Edits[];
  readonly now: Edits;
  readonly future: readonly Edits[];
  /** The movement that made the present: further steps of it make no further past. */
  readonly movement?: string | undefined;
}

/** So far back, and no further: a day at the bench. */
const DEPTH = 500;

export const startHistory = (now: Edits): History => ({ past: [], now, future: [] });

/** The history with a new present. A step of a movement that goes on (a drag, a typing) replaces the one before. */
export function moveOn(history: History, next: Edits, movement?: string): History {
  const { past, now } = history;
  if (sameEdits(now, next)) return history;
  const goesOn = movement !== undefined && movement === history.movement;
  return { past: goesOn ? past : [...past, now].slice(-DEPTH), now: next, future: [], movement };
}

export function undo({ past, now, future }: History): History {
  const before = past.at(-1);
  return before ? { past: past.slice(0, -1), now: before, future: [now, ...future] } : { past, now, future };
}

export function redo({ past, now, future }: History): History {
  const [next, ...rest] = future;
  return next ? { past: [...past, now], now: next, future: rest } : { past, now, future };
}
