import type { Design } from '../../build/design.ts';
import type { CheckAnswer, CheckQuestion, Unnumbered } from './messages.ts';
import { serveChecks } from './serve-checks.ts';
import { startWorker } from './start-worker.ts';

/** Where questions go. Answers to all but the latest are thrown away. */
export interface CheckDesk {
  ask(question: Unnumbered<CheckQuestion>, answer: (answer: CheckAnswer) => void): void;
  /** Ends the worker. */
  close(): void;
}

/**
 * A desk with a worker behind it that runs a script: the one of the page itself. Where a browser lets no worker start,
 * the page answers by itself, a check at a time.
 */
export function openDesk(design: Design, script: string): CheckDesk {
  let serial = 0;
  let listener: ((answer: CheckAnswer) => void) | undefined;
  const hear = (answer: CheckAnswer): void => {
    if (answer.serial === serial) listener?.(answer);
  };
  const worker = startWorker<CheckAnswer>(script, hear);
  const own = worker ? undefined : serveChecks(design, hear);
  return {
    ask(question, answer) {
      serial += 1;
      listener = answer;
      if (worker) worker.postMessage({ ...question, serial });
      else own!.ask({ ...question, serial });
    },
    close: () => worker?.terminate(),
  };
}
