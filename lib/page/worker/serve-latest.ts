/** How the work on one question takes turns with whatever else happens. */
export interface Turns {
  /** Whether a later question has come. */
  isStale(): boolean;
  /** Lets others have a turn. */
  turn(): Promise<void>;
  /** Waits whether a later question comes: what is slow is pointless while a value is dragged. */
  rest(): Promise<void>;
}

/** What answers, and where it lives: a worker of its own, or the page itself where there can be none. */
export interface Server<Q> {
  ask(question: Q): void;
}

/** Quiet after which nobody is dragging any more, ms. */
const QUIET = 250;

/** Works on the latest question; an earlier one ends at its next turn. */
export function serveLatest<Q>(run: (question: Q, turns: Turns) => Promise<void>): Server<Q> {
  let latest: Q | undefined;
  let busy = false;
  const work = async (): Promise<void> => {
    busy = true;
    // Not in the turn of the question: others may be behind it, and in a page it would hold up the frame.
    await pause(0);
    let done: Q | undefined;
    while (latest && latest !== done) {
      const question = latest;
      done = question;
      await run(question, { isStale: () => latest !== question, turn: () => pause(0), rest: () => pause(QUIET) });
    }
    busy = false;
  };
  return {
    ask(question) {
      latest = question;
      if (!busy) void work();
    },
  };
}

const pause = (ms: number): Promise<void> => new Promise((go) => setTimeout(go, ms));
