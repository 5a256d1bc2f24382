/** What the command answers to the shell. */
export const EXIT = {
  good: 0,
  /** A check fails, or a product could not be made. */
  failed: 1,
  /** The command line, a parameter or a design file is wrong. */
  wrongUse: 2,
  /** Ours, not the user's. */
  bug: 70,
  /** Ctrl-C. */
  stopped: 130,
} as const;

export type Exit = (typeof EXIT)[keyof typeof EXIT];

/** Of several designs the worst counts. */
export const worstExit = (exits: readonly Exit[]): Exit => Math.max(EXIT.good, ...exits) as Exit;
