import type { Design } from '../../build/design.ts';
import type { BoardsAnswer, BoardsQuestion } from './messages.ts';
import { runBoards } from './run-boards.ts';
import { type Server, serveLatest } from './serve-latest.ts';

/** Plans the boards of one design, always for the latest question. */
export const serveBoards = (design: Design, answer: (answer: BoardsAnswer) => void): Server<BoardsQuestion> =>
  serveLatest((question, turns) => runBoards(design, question, { ...turns, answer }));
