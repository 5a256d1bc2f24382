import type { FieldHands } from './field.ts';
import type { Hands } from './view.ts';

/** What the field of a path does at the bench. */
export const fieldHandsOf =
  (hands: Hands, askLimits: () => void) =>
  (path: string): FieldHands => ({
    set: (text, movement) => hands.set(path, text, movement),
    setIfGood: (text, movement) => hands.setIfGood(path, text, movement),
    putBack: () => hands.putBack(path),
    askLimits,
  });
