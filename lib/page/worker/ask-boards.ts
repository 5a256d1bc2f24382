import type { BoardsAnswer, BoardsQuestion, Unnumbered } from './messages.ts';
import { startWorker } from './start-worker.ts';

/** Where questions about boards go. Answers to all but the latest are thrown away. */
export interface BoardsDesk {
  ask(question: Unnumbered<BoardsQuestion>, answer: (answer: BoardsAnswer) => void): void;
  /** The answer is not wanted any more. */
  forget(): void;
}

/**
 * A desk with a worker of its own behind it, so that checks need not wait: started at the first question. Without workers
 * it says so: the page itself would stand still.
 */
export function openBoardsDesk(script: string): BoardsDesk {
  let serial = 0;
  let worker: Worker | undefined;
  let listener: ((answer: BoardsAnswer) => void) | undefined;
  const hear = (answer: BoardsAnswer): void => {
    if (answer.serial === serial) listener?.(answer);
  };
  return {
    forget() {
      serial += 1;
    },
    ask(question, answer) {
      serial += 1;
      listener = answer;
      worker ??= startWorker<BoardsAnswer>(script, hear);
      if (worker) worker.postMessage({ ...question, about: 'boards', serial });
      else hear({ serial, kind: 'failed', because: 'this browser lets no worker start' });
    },
  };
}
