import type { Design } from '../../build/design.ts';
import type { BoardsAnswer, BoardsQuestion, CheckAnswer, CheckQuestion } from './messages.ts';
import { serveBoards } from './serve-boards.ts';
import { serveChecks } from './serve-checks.ts';

/** As much of the scope of a worker as is used. */
interface WorkerScope {
  postMessage(message: CheckAnswer | BoardsAnswer): void;
  onmessage: ((event: MessageEvent<CheckQuestion | BoardsQuestion>) => void) | null;
}

/** Whether the script runs in a worker and not in a page. */
export const isWorker = (): boolean => typeof document === 'undefined';

/** Answers what the page asks. */
export function serveFromWorker(design: Design): void {
  const scope = globalThis as unknown as WorkerScope;
  const checks = serveChecks(design, (answer) => scope.postMessage(answer));
  const boards = serveBoards(design, (answer) => scope.postMessage(answer));
  scope.onmessage = ({ data }) => (data.about === 'boards' ? boards.ask(data) : checks.ask(data));
}
