import type { Design } from '../../build/design.ts';
import type { CheckAnswer, CheckQuestion } from './messages.ts';
import { runChecks } from './run-checks.ts';
import { type Server, serveLatest } from './serve-latest.ts';

/** Answers questions about one design, always the latest. */
export const serveChecks = (design: Design, answer: (answer: CheckAnswer) => void): Server<CheckQuestion> =>
  serveLatest((question, turns) => runChecks(design, question, { ...turns, answer }));
