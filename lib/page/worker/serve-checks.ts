import type { Design } from '../../build/design.ts';
import type { CheckAnswer, CheckQuestion } from './messages.ts';
import { runChecks } from './run-checks.ts';

/** Quiet after which nobody is dragging any more, ms. */
const QUIET = 250;

/** What answers, and where it lives: a worker of its own, or the page itself where there can be none. */
export interface CheckServer {
  ask(question: CheckQuestion): void;
}

/** Answers questions about one design, always the latest. */
export function serveChecks(design: Design, answer: (answer: CheckAnswer) => void): CheckServer {
  let latest: CheckQuestion | undefined;
  let busy = false;
  const work = async (): Promise<void> => {
    busy = true;
    // Not in the turn of the question: others may be behind it, and in a page it would hold up the frame.
    await pause(0);
    let done: CheckQuestion | undefined;
    while (latest && latest !== done) {
      const question = latest;
      done = question;
      await runChecks(design, question, {
        answer,
        isStale: () => latest !== question,
        turn: () => pause(0),
        rest: () => pause(QUIET),
      });
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
